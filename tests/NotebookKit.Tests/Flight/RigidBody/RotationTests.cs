using CsCheck;

namespace NotebookKit.Tests.Flight.RigidBody;

public class RotationTests
{
    private static readonly Gen<Rotation> Any =
        Gen.Select(Gen.Double[-3.1, 3.1], Gen.Double[-1.5, 1.5], Gen.Double[-3.1, 3.1],
            (yaw, pitch, roll) => Rotation.FromYawPitchRoll(yaw, pitch, roll));

    private static readonly Gen<Vector> AnyVector =
        Gen.Select(Gen.Double[-10, 10], Gen.Double[-10, 10], Gen.Double[-10, 10], (x, y, z) => new Vector(x, y, z));

    [Fact]
    public void Yaw_turns_the_nose_from_north_to_east()
    {
        var nose = Rotation.FromYawPitchRoll(Math.PI / 2, 0, 0).Out(new(1, 0, 0));
        Tolerance.Absolute(0, (nose - new Vector(0, 1, 0)).Length, 1e-15);
    }

    [Fact]
    public void Pitch_lifts_the_nose()
    {
        var nose = Rotation.FromYawPitchRoll(0, Math.PI / 2, 0).Out(new(1, 0, 0));
        Tolerance.Absolute(0, (nose - new Vector(0, 0, -1)).Length, 1e-15);
    }

    [Fact]
    public void Roll_lowers_the_right_hand_side()
    {
        var right = Rotation.FromYawPitchRoll(0, 0, Math.PI / 2).Out(new(0, 1, 0));
        Tolerance.Absolute(0, (right - new Vector(0, 0, 1)).Length, 1e-15);
    }

    [Fact]
    public void Yaw_comes_before_pitch_and_pitch_before_roll() =>
        Any.Sample(r =>
        {
            var (yaw, pitch, roll) = r.YawPitchRoll();
            var again = Rotation.FromYawPitchRoll(yaw, 0, 0) * Rotation.FromYawPitchRoll(0, pitch, 0) * Rotation.FromYawPitchRoll(0, 0,
                roll);
            var v = new Vector(1, 2, 3);
            Tolerance.Absolute(0, (r.Out(v) - again.Out(v)).Length, 1e-12);
        });

    [Fact]
    public void In_undoes_out_and_lengths_stay_whatever_the_length_of_the_quaternion() =>
        Gen.Select(Any, AnyVector, Gen.Double[0.1, 10]).Sample((r, v, scale) =>
        {
            var stretched = new Rotation(scale * r.W, scale * r.X, scale * r.Y, scale * r.Z);
            Tolerance.Absolute(0, (stretched.In(stretched.Out(v)) - v).Length, 1e-12);
            Tolerance.Absolute(v.Length, stretched.Out(v).Length, 1e-12);
        });

    [Fact]
    public void Axes_give_back_the_attitude_they_were_taken_from() =>
        Any.Sample(r =>
        {
            var again = Rotation.FromAxes(r.Out(new(1, 0, 0)), r.Out(new(0, 1, 0)), r.Out(new(0, 0, 1)));
            var v = new Vector(-3, 0.5, 2);
            Tolerance.Absolute(0, (again.Out(v) - r.Out(v)).Length, 1e-12);
        });

    [Fact]
    public void The_rate_of_an_attitude_is_that_of_the_axes_it_turns() =>
        Gen.Select(Any, AnyVector, AnyVector).Sample((r, spin, v) =>
        {
            Span<double> rate = stackalloc double[4];
            r.Rate(spin, rate);
            const double Step = 1e-6;
            var later = new Rotation(r.W + (Step * rate[0]), r.X + (Step * rate[1]), r.Y + (Step * rate[2]), r.Z + (Step * rate[3]));
            var expected = r.Out(Vector.Cross(spin, v));
            var actual = 1 / Step * (later.Out(v) - r.Out(v));
            Tolerance.Absolute(0, (expected - actual).Length, 2e-2);
        });
}
