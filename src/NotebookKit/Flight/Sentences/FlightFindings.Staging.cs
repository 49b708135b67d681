using NotebookKit.Provenance;

namespace NotebookKit.Flight;

internal static partial class FlightFindings
{
    // Flight/Design/TwoStageVehicle
    internal static Finding StageHasNoBody() =>
        Finding.Error("a stack needs a sustainer with a body and a booster with a nose and a tube behind it; give the parts of both.");

    // Flight/Staging/DragSeparation
    internal static Finding BoosterDragIsLessInWake() =>
        Finding.Note(
            "the booster's drag is less in the sustainer's wake than in free air, and friction in the joint holds the "
            + "booster back: provide twice the force that the joint needs (common practice).");

    internal static Finding BoosterSlowsLessThanSustainer() =>
        Finding.Warning(
            "the booster slows less than the sustainer: drag presses the stages together. Use a spring, trapped pressure "
            + "or a latch to separate the stages.");

    // Flight/Staging/StagingVerbs
    internal static Finding SustainerHasLaunchTube() =>
        Finding.Error("the sustainer has a launch tube; it starts in the air, off the booster. Set its LaunchTube to null.");

    internal static Finding BoosterBodyHasTooFewParts(int partsCount) =>
        Finding.Error(
            $"the booster's body has {partsCount} part; it must have a nose and a tube. The nose sits in the sustainer's tail.");
}
