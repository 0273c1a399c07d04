package rundlauf.cutting.prediction;

import rundlauf.character.SetupCharacter;
import rundlauf.cutting.CutterInUse;
import rundlauf.cutting.WorkMaterial;

/** A cut to be predicted: what cuts what, how, and what holds it. */
public record CutTask(
    CutterInUse cutter,
    CutAsked cut,
    WorkMaterial material,
    SetupCharacter setup,
    Allowed allowed) {

  /** The same with another cut. */
  public CutTask with(CutAsked other) {
    return new CutTask(cutter, other, material, setup, allowed);
  }
}
