package org.stoutwork.wood.time;

import java.util.Arrays;

/** How damp the air around a timber is, after EN 1995-1-1 2.3.1.3. */
public enum ServiceClass {
  /** Heated rooms: above 65 % relative humidity only a few weeks a year. */
  CLASS_1(1),
  /** Unheated but covered: above 85 % relative humidity only a few weeks a year. */
  CLASS_2(2),
  /** Damper than that, such as outdoors. */
  CLASS_3(3);

  private final int number;

  ServiceClass(int number) {
    this.number = number;
  }

  /** The class as it is printed. */
  public String words() {
    return "service class " + number;
  }

  /** 1, 2 or 3. */
  public int number() {
    return number;
  }

  /** The class of air whose highest relative humidity, as a fraction, lasts for weeks. */
  public static ServiceClass ofHumidity(double highest) {
    return highest <= 0.65 ? CLASS_1 : highest <= 0.85 ? CLASS_2 : CLASS_3;
  }

  /** The class of most softwoods that become so wet, in % moisture content. */
  public static ServiceClass ofMoisture(double wettest) {
    return wettest <= 12 ? CLASS_1 : wettest <= 20 ? CLASS_2 : CLASS_3;
  }

  /** The damper one of this class and another. */
  public ServiceClass damper(ServiceClass other) {
    return compareTo(other) >= 0 ? this : other;
  }

  /**
   * The class with a number.
   *
   * @throws IllegalArgumentException unless it is 1, 2 or 3
   */
  public static ServiceClass numbered(int number) {
    return Arrays.stream(values())
        .filter(one -> one.number == number)
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "a service class is 1, 2 or 3; it was %s".formatted(number)));
  }
}
