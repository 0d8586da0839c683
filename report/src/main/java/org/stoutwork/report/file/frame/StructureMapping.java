package org.stoutwork.report.file.frame;

import java.util.LinkedHashMap;
import java.util.Map;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.Material;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.Restraint;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.report.file.field.Field;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Got;
import org.stoutwork.report.file.field.Kinds;
import org.stoutwork.report.file.field.Range;
import org.stoutwork.report.file.field.Value;

/**
 * Nodes, materials, sections, members, supports and masses.
 *
 * @param nodes places by name
 * @param materials by name
 * @param sections by name
 * @param members by name
 * @param supports by node
 * @param masses by node
 * @param lengths flexible length by member, of those that could be read
 */
record StructureMapping(
    Got<Map<String, Vec3>> nodes,
    Got<Map<String, Material>> materials,
    Got<Map<String, CrossSection>> sections,
    Got<Map<String, Member>> members,
    Got<Map<String, Map<Direction, Restraint>>> supports,
    Got<Map<String, Double>> masses,
    Map<String, Double> lengths) {

  static StructureMapping read(Fields file, Names names) {
    Map<String, Vec3> places = new LinkedHashMap<>();
    Got<Map<String, Vec3>> nodes =
        needed(file, file.entries("nodes", (name, value) -> node(name, value, places)));
    Got<Map<String, Material>> materials =
        needed(file, file.entries("materials", (name, v) -> v.map(StructureMapping::material)));
    Got<Map<String, CrossSection>> sections =
        needed(file, file.entries("sections", (name, v) -> v.map(StructureMapping::section)));
    MemberMapping mapping = new MemberMapping(names, places);
    Got<Map<String, Member>> members =
        needed(file, file.entries("members", (name, v) -> v.map(f -> mapping.member(name, f))));
    Got<Map<String, Map<Direction, Restraint>>> supports =
        FrameMapping.orNone(
            file.entries("supports", (name, v) -> SupportMapping.node(name, v, names)));
    Got<Map<String, Double>> masses =
        FrameMapping.orNone(file.entries("masses", (name, v) -> mass(name, v, names)));
    return new StructureMapping(
        nodes, materials, sections, members, supports, masses, mapping.lengths());
  }

  private static <T> Got<Map<String, T>> needed(Fields file, Field<Map<String, T>> field) {
    return Names.isFrameNeeded(file) ? field.required() : FrameMapping.orNone(field);
  }

  private static Got<Vec3> node(String name, Value value, Map<String, Vec3> places) {
    Got<Vec3> place = Vectors.vector(value);
    place.ifThere(at -> places.put(name, at));
    return place;
  }

  private static Got<Material> material(Fields fields) {
    Got<Double> e = fields.number("E", Range.POSITIVE).required();
    Got<Double> g = fields.number("G", Range.POSITIVE).required();
    Got<Double> density =
        fields
            .number("density_kg_m3", Range.NOT_NEGATIVE)
            .orDefault(0.0, "a material without density weighs nothing");
    return fields.build(() -> new Material(e.get(), g.get(), density.get()));
  }

  private static Got<CrossSection> section(Fields fields) {
    Got<Double> area = fields.number("A", Range.POSITIVE).required();
    Got<Double> iy = fields.number("Iy", Range.POSITIVE).required();
    Got<Double> iz = fields.number("Iz", Range.POSITIVE).required();
    Got<Double> j = fields.number("J", Range.POSITIVE).required();
    Got<Double> asy = shearArea(fields, "Asy");
    Got<Double> asz = shearArea(fields, "Asz");
    // The outline is information for people; it must make sense, and is not used.
    fields.number("b", Range.POSITIVE).optional();
    fields.number("h", Range.POSITIVE).optional();
    return fields.build(
        () -> new CrossSection(area.get(), iy.get(), iz.get(), j.get(), asy.get(), asz.get()));
  }

  /** Absent or 0: no shear deformation in that plane. That is the format's rule, no default. */
  private static Got<Double> shearArea(Fields fields, String key) {
    return fields.number(key, Range.NOT_NEGATIVE).optional().map(given -> given.orElse(0.0));
  }

  private static Got<Double> mass(String node, Value value, Names names) {
    return names.isNode(node)
        ? value.as(Kinds.number(Range.NOT_NEGATIVE))
        : SupportMapping.noNode(node, value, names);
  }
}
