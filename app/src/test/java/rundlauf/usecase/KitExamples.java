package rundlauf.usecase;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Invented parts that fill every field of every section, in an order in which they can be put. */
public final class KitExamples {
  private KitExamples() {}

  /** A part to be put: its section, and its fields by path. */
  public record Example(String section, Map<String, String> typed) {
    public String name() {
      return typed.getOrDefault("name", "");
    }

    @Override
    public String toString() {
      return section + ": " + name();
    }
  }

  public static List<Example> all() {
    return List.of(
        of(
            "spindles",
            "name=Plover|drive=universal|rotation=cw|input=710 W|efficiency=0,55|"
                + "supply.voltage=230 V|supply.kind=ac|control=dial|label-speed.min=8000 rpm|"
                + "label-speed.max=26000 rpm|nose.to-mount=41,5 mm|nose.clamped-at=neck|"
                + "rotor-mass=410 ± 20 g|notes=Invented: its \"third\" set of brushes"),
        of(
            "holders",
            "name=sleeve 1/8|kind=sleeve|system=own|bore=1/8 in|range.min=3 mm|"
                + "range.max=3.2 mm|material=steel|class=2|max-speed=30000 rpm|notes=turned here: once"),
        of(
            "cutters",
            "name=0.8 mm two-flute|kind=end-mill|diameter=0,8 mm|flutes=2|helix=30 deg|"
                + "flute-length=3 mm|stickout=18 mm|shank=1/8 in|modulus=580 GPa|strength=2500 MPa|"
                + "edge-radius=3 um|angle=30 deg|max-speed=50000 rpm|notes=# new, in its tube"),
        of(
            "indicators",
            "name=lever dial|division=0,01 mm|read-to=0.005 mm|limit-of-error=8 um|"
                + "hysteresis=3 um|repeatability=2 um|tip-radius=1 mm|angle=5 deg|notes=lent"),
        of(
            "indicators",
            "name=calibrated dial|division=0.01 mm|limit-of-error.tenth-turn=5 um|"
                + "limit-of-error.half-turn=8 um|limit-of-error.turn=9 um|limit-of-error.range=15 um"),
        of(
            "indicators",
            "name=dial by norm|division=0.01 mm|norm=JIS B 7503|range=10 mm|bezel=50 mm or more"),
        of(
            "rigs",
            "name=ash lever|load-arm=180 ± 0,5 mm|contact-arm=60 ± 0.5 mm|mass=750 ± 1 g|"
                + "gravity=9.81 m/s2|notes=its pivot is a needle"),
        of(
            "materials",
            "name=boxwood|force.Ktc=80 MPa|force.Krc=20 MPa|force.Kac=10 MPa|"
                + "force.Kte=1 N/mm|force.Kre=1.2 N/mm|force.Kae=0,1 N/mm|cutting-speed.min=60 m/min|"
                + "cutting-speed.max=200 m/min|largest-chip=30 um|notes=Invented"),
        of(
            "materials",
            "name=horn|force.kc11=70 MPa|force.mc=0.25|force.kr-ratio=0,4|" + "force.ka-ratio=0.2"),
        of(
            "setups",
            "name=Plover 0.8 mm|spindle=Plover|holder=sleeve 1/8|"
                + "cutter=0.8 mm two-flute|stickout=18 mm|notes=for purfling"),
        of(
            "jobs",
            "name=purfling channel|material.name=boxwood|feature=slot|"
                + "cutter[]=0.8 mm two-flute|depth=1,2 mm|width=0.8 mm|length=900 mm|"
                + "tolerance=0.08 mm|wall-share=0.5|finish=4 um|workholding.in-plane=60 N|"
                + "workholding.lift=30 N|notes=Invented"));
  }

  private static Example of(String section, String fields) {
    Map<String, String> typed = new LinkedHashMap<>();
    for (String field : fields.split("\\|", -1)) {
      int equals = field.indexOf('=');
      typed.put(field.substring(0, equals), field.substring(equals + 1));
    }
    return new Example(section, typed);
  }
}
