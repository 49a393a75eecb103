using Jumpwright.Mechanics;
using Jumpwright.Quantities;
using Jumpwright.Tests.CheckValues;

namespace Jumpwright.Tests.Mechanics;

/// <summary>Every row of the published check values that concerns mechanics; each row names its source.</summary>
public class MechanicsCheckValueTests
{
    public static TheoryData<string> Rows => [.. Kernels.Keys];

    internal static readonly Dictionary<string, Func<CheckValue, double>> Kernels = new(StringComparer.Ordinal)
    {
        ["T1"] = FlightHeight,
        ["T2"] = FlightHeight,
        ["T3"] = FlightHeight,
        ["T4"] = FlightHeight,
        ["T5"] = FlightHeight,
        ["T6"] = VelocityHeight,
        ["T7"] = VelocityHeight,
        ["T8"] = VelocityHeight,
        ["T9"] = WrongWeightHeight,
        ["N2"] = WrongWeightHeight,
        ["T10"] = r => 100 * Flight.HeightResolutionM(r.Number("flight_time_s"), 1 / r.Number("frames_per_second")),
        ["T11"] = r => Flight.TouchDownSpeedMS(r.Number("drop_height_m")),
        ["T12"] = r => Flight.TouchDownSpeedMS(r.Number("drop_height_m")),
        ["T13a"] = Ratio,
        ["T14a"] = Ratio,
        ["N4a"] = Ratio,
        ["T13b"] = Index,
        ["T14b"] = Index,
        ["N4b"] = Index,
        ["T15"] = r => ReactiveStrength.ModifiedIndex(r.Number("jump_height_m"), r.Number("time_to_take_off_s")),
        ["T16"] = r => ReactiveStrength.ModifiedIndex(r.Number("jump_height_m"), r.Number("time_to_take_off_s")),
        ["T17"] = Hopping,
        ["T18"] = Hopping,
        ["N6a"] = Hopping,
        ["N6b"] = Hopping,
        ["T19a"] = SineForce,
        ["N7a"] = SineForce,
        ["T19b"] = RunningVertical,
        ["N7b"] = RunningVertical,
        ["T19c"] = RunningLeg,
        ["N7c"] = RunningLeg,
        ["T20"] = r => PowerRegressions.SayersSquatJumpW(Cm(r), Kg(r)),
        ["T21a"] = r => PowerRegressions.SayersSquatJumpW(Cm(r), Kg(r)),
        ["T21b"] = r => PowerRegressions.SayersCountermovementW(Cm(r), Kg(r)),
        ["T22"] = r => PowerRegressions.LewisMeanW(Cm(r), Kg(r)),
        ["T23"] = r => PowerRegressions.CanavanVescoviW(Cm(r), Kg(r)),
        ["T24"] = r => PowerRegressions.AmonetteW(Cm(r), Kg(r)),
        ["N5"] = r => PowerRegressions.HarmanPeakW(Cm(r), Kg(r)),
        ["X3"] = r => PowerRegressions.JohnsonBahamondePeakW(Cm(r), Kg(r), r.Number("stature_cm")),
        ["T25"] = r =>
            RepeatedJumpPower.BoscoWKg(r.Number("total_flight_s"), r.Number("total_time_s"), (int)r.Number("jumps")),
        ["T26a"] = r => PushOff.MeanForceN(Kg(r), r.Number("jump_height_m"), r.Number("push_off_m")),
        ["T26b"] = r => PushOff.MeanVelocityMS(r.Number("jump_height_m")),
        ["T26c"] = r => PushOff.MeanPowerW(Kg(r), r.Number("jump_height_m"), r.Number("push_off_m")),
        ["T40a"] = Tension,
        ["T40b"] = r => Bands.WeightLeftPct(Kg(r), Tension(r)),
        ["X2a"] = ConstantForceVelocity,
        ["X2b"] = r => Flight.HeightFromVelocityM(ConstantForceVelocity(r)),
        ["X4"] = r => Impulse.MomentumKgMS(Kg(r), Flight.TouchDownSpeedMS(r.Number("flight_time_height_m"))),
        ["N1a"] = LowLandingTime,
        ["N1b"] = r => Flight.HeightFromTimeM(LowLandingTime(r)),
        ["N3a"] = r =>
            Flight.HeightFromVelocityM(
                Impulse.TouchDownSpeedMS(r.Number("contact_net_impulse_N_s"), Kg(r), r.Number("take_off_velocity_m_s"))
            ),
        ["N3b"] = r =>
            Flight.HeightFromVelocityM(
                (r.Number("contact_net_impulse_N_s") / Kg(r)) - Flight.TouchDownSpeedMS(r.Number("box_height_m"))
            ),
        ["N12d"] = r => Asymmetry.OverSumPct(r.Number("left"), r.Number("right")),
    };

    [Theory]
    [MemberData(nameof(Rows))]
    public void Kernel_OfAPublishedRow_GivesItsValue(string id) => CheckValueTable.Assert(id, Kernels[id]);

    [Fact]
    public void HalfSine_NetForce_GivesItsClosedForm()
    {
        // A half-sine of 900 N over 0.25 s on 70 kg, integrated by the trapezoid at 20 kHz.
        const double rate = 20_000;
        double[] net = [.. Enumerable.Range(0, 5001).Select(i => 900 * Math.Sin(Math.PI * i / 5000.0))];
        Assert.Equal(Impulse.HalfSineVelocityMS(900, 0.25, 70), Impulse.OfNs(net, rate) / 70, 6);
    }

    [Fact]
    public void Stiffness_OfMorinAndDalleau_IsOnePhysics()
    {
        // Literature notes, section 4: both give 22,268.9 N/m at 70 kg, 0.20 s, 0.50 s.
        Assert.Equal(Stiffness.HoppingNM(70, 0.20, 0.50), Stiffness.RunningVerticalNM(70, 0.20, 0.50), 6);
        Assert.Equal(70 * Math.PI * Math.PI / 0.04, Stiffness.HalfPeriodNM(70, 0.2), 6);
    }

    [Fact]
    public void Harman_WithThePlusSignOfManyPages_WouldBeThousandsTooHigh() =>
        Assert.True(PowerRegressions.HarmanPeakW(45, 62) < PowerRegressions.SayersSquatJumpW(45, 62));

    private static double Kg(CheckValue r) => r.Number("body_mass_kg");

    private static double Cm(CheckValue r) => r.Number("jump_height_cm");

    private static double FlightHeight(CheckValue r) => Flight.HeightFromTimeM(r.Number("flight_time_s"));

    private static double VelocityHeight(CheckValue r) => Flight.HeightFromVelocityM(r.Number("take_off_velocity_m_s"));

    private static double WrongWeightHeight(CheckValue r) =>
        Flight.HeightFromVelocityM(
            Impulse.VelocityWithWrongWeightMS(
                Kg(r),
                r.Number("take_off_velocity_m_s"),
                r.Number("onset_to_take_off_s"),
                r.Number("weight_error_pct") / 100
            )
        );

    private static double Ratio(CheckValue r) =>
        ReactiveStrength.FlightContactRatio(r.Number("flight_time_s"), r.Number("contact_time_s"));

    private static double Index(CheckValue r) => ReactiveStrength.Index(FlightHeight(r), r.Number("contact_time_s"));

    private static double Hopping(CheckValue r) =>
        Stiffness.HoppingNM(Kg(r), r.Number("contact_time_s"), r.Number("flight_time_s"));

    private static double SineForce(CheckValue r) =>
        Stiffness.SineForceN(Kg(r), r.Number("contact_time_s"), r.Number("flight_time_s"));

    private static double RunningVertical(CheckValue r) =>
        Stiffness.RunningVerticalNM(Kg(r), r.Number("contact_time_s"), r.Number("flight_time_s"));

    private static double RunningLeg(CheckValue r) =>
        Stiffness.RunningLegNM(
            Kg(r),
            r.Number("leg_length_m"),
            r.Number("speed_m_s"),
            r.Number("contact_time_s"),
            r.Number("flight_time_s")
        );

    private static double Tension(CheckValue r) =>
        Bands.TensionN(r.Number("stiffness_N_m"), 0, r.Number("rest_length_m"), r.Number("stretched_length_m"));

    private static double ConstantForceVelocity(CheckValue r) =>
        Impulse.VelocityGainMS(r.Number("constant_force_N") * r.Number("duration_s"), r.Number("duration_s"), Kg(r));

    private static double LowLandingTime(CheckValue r) =>
        Flight.TimeS(r.Number("take_off_velocity_m_s"), r.Number("COM_lower_at_landing_m"));
}
