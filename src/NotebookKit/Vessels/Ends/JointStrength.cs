using NotebookKit.Provenance;
using NotebookKit.Vessels.Design;

namespace NotebookKit.Vessels.Ends;

/// <summary>Where the joints of an end let go: each joint by its own strength.</summary>
internal static class JointStrength
{
    /// <summary>Pressure at which a joint lets go [Pa].</summary>
    public static double FailurePascals(this EndJoint joint, in EndContext context) => joint switch
    {
        BondedPlug plug => PlugStrength.FailurePascals(plug, context),
        ThreadedBoss boss => BossStrength.FailurePascals(boss, context),
        CarriedSleeve sleeve => SleeveStrength.FailurePascals(sleeve, context),
        _ => throw Unknown(joint),
    };

    /// <summary>How a joint lets go, a few words.</summary>
    public static string Cause(this EndJoint joint) => joint switch
    {
        BondedPlug plug => PlugStrength.Cause(plug),
        ThreadedBoss => BossStrength.Cause,
        CarriedSleeve => SleeveStrength.Cause,
        _ => throw Unknown(joint),
    };

    /// <summary>Shown working of a joint at the pressure at which it lets go.</summary>
    public static IEnumerable<WorkingStep> Work(this EndJoint joint, EndContext context) => joint switch
    {
        BondedPlug plug => PlugStrength.Work(plug, context),
        ThreadedBoss boss => BossStrength.Work(boss, context),
        CarriedSleeve sleeve => SleeveStrength.Work(sleeve, context),
        _ => throw Unknown(joint),
    };

    private static InvalidDesignException Unknown(EndJoint joint) =>
        new(joint.Name, [VesselsFindings.JointIsNotModelled(joint.Name)]);
}
