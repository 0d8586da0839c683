package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.stoutwork.analysis.element.Element;
import org.stoutwork.analysis.element.LinearForm;
import org.stoutwork.analysis.element.SpringElement;

/**
 * The equations of a structure while they are being collected. Vertices have six unknowns each,
 * numbered 6 × vertex + direction; any {@link Element} may join.
 */
public final class Equations {
  final List<String> vertices = new ArrayList<>();
  final List<Element> elements = new ArrayList<>();
  final List<LinearForm> conditions = new ArrayList<>();
  final List<Double> given = new ArrayList<>();
  final List<Contact> contacts = new ArrayList<>();
  final List<Integer> absent = new ArrayList<>();
  private double reach = 1000;

  /** Begins without anything. */
  public Equations() {}

  /** Adds a vertex with six unknowns and returns its number. */
  public int vertex(String name) {
    vertices.add(name);
    return vertices.size() - 1;
  }

  /** Number of unknowns so far. */
  public int unknowns() {
    return 6 * vertices.size();
  }

  /** Takes an unknown out of the equations for good (a plate bent only has three a vertex). */
  public Equations absent(int unknown) {
    absent.add(unknown);
    return this;
  }

  /** Adds an element. */
  public Equations add(Element element) {
    elements.add(element);
    return this;
  }

  /** Adds a spring; returns its number among the elements. */
  public int spring(String part, LinearForm stretch, double stiffness) {
    elements.add(new SpringElement(part, stretch, stiffness));
    return elements.size() - 1;
  }

  /** Demands that a displacement has a value in every solution; returns the condition's number. */
  public int hold(LinearForm form, double value) {
    conditions.add(form);
    given.add(value);
    return conditions.size() - 1;
  }

  /**
   * Adds a contact that pushes while {@code gap} wants to be negative and lets it grow freely.
   *
   * @param stiffness N/mm, or infinite for a rigid contact
   * @return the contact's number
   */
  public int contact(String part, LinearForm gap, double stiffness) {
    contacts.add(new Contact(part, gap, stiffness));
    return contacts.size() - 1;
  }

  /** A copy in which the elements from {@code first} on are replaced by others. */
  Equations withElements(int first, List<? extends Element> others) {
    Equations copy = new Equations();
    copy.vertices.addAll(vertices);
    copy.elements.addAll(elements);
    for (int k = 0; k < others.size(); k++) {
      copy.elements.set(first + k, others.get(k));
    }
    copy.conditions.addAll(conditions);
    copy.given.addAll(given);
    copy.contacts.addAll(contacts);
    copy.absent.addAll(absent);
    copy.reach = reach;
    return copy;
  }

  /** A copy in which each contact is closed for good or gone. */
  Equations withFrozenContacts(boolean[] open) {
    Equations copy = withElements(0, List.of());
    copy.contacts.clear();
    for (int c = 0; c < contacts.size(); c++) {
      Contact contact = contacts.get(c);
      if (!open[c] && contact.isRigid()) {
        copy.hold(contact.gap(), 0);
      } else if (!open[c]) {
        copy.spring(contact.part(), contact.gap(), contact.stiffness());
      }
    }
    return copy;
  }

  /** Sets the characteristic length of the structure, mm, by which rotations are judged. */
  public Equations reach(double length) {
    this.reach = length;
    return this;
  }

  double reach() {
    return reach;
  }

  boolean[] absentFlags() {
    boolean[] flags = new boolean[unknowns()];
    absent.forEach(i -> flags[i] = true);
    return flags;
  }

  /** Index over all unknowns as {@code node name, direction}. */
  String vertexOf(int unknown) {
    return vertices.get(unknown / 6);
  }

  int[] groups(Elimination elimination) {
    int[] group = new int[elimination.reducedSize()];
    int[] number = new int[vertices.size()];
    Arrays.fill(number, -1);
    int count = 0;
    for (int r = 0; r < group.length; r++) {
      int v = elimination.unknownOf(r) / 6;
      if (number[v] < 0) {
        number[v] = count++;
      }
      group[r] = number[v];
    }
    return group;
  }
}
