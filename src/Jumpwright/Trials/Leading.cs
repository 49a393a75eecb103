namespace Jumpwright.Trials;

/// <summary>One foot that meets its plate well before the other: said in words, and the sides' asymmetry is doubted.</summary>
internal static class Leading
{
    /// <summary>Feet that land this far apart do not land together, s (house rule).</summary>
    private const double TogetherS = 0.010;

    /// <summary>A foot is on its plate from this part of the load on; noise asks for more.</summary>
    private const double OnPart = 0.03;

    private const double BeforeS = 0.01;
    private const double WithinS = 0.15;

    /// <summary>Looks at a touch-down from which a push follows.</summary>
    public static void CheckPush(MeasureList into, Plate plate, Instant touchDown) =>
        Check(into, plate, touchDown, MeasureNames.AsymmetryBrakingImpulse, MeasureNames.AsymmetryPropulsiveImpulse);

    /// <summary>Looks at one touch-down.</summary>
    /// <param name="into">Receives the sentence.</param>
    /// <param name="plate">The recording.</param>
    /// <param name="touchDown">The touch-down.</param>
    /// <param name="sides">Asymmetries that the lead makes doubtful.</param>
    public static void Check(MeasureList into, Plate plate, Instant touchDown, params ReadOnlySpan<string> sides)
    {
        if (!plate.Recording.HasTwoPlates)
        {
            return;
        }

        int left = FirstOn(plate, plate.Recording.LeftN.Span, plate.LeftEmpty.ZeroN, touchDown);
        int right = FirstOn(plate, plate.Recording.RightN.Span, plate.RightEmpty.ZeroN, touchDown);
        double apart = Math.Abs(plate.Seconds(left, right));
        if (left >= 0 && right >= 0 && apart >= TogetherS)
        {
            into.Doubt(Cautions.OneFootFirst(left < right, apart), sides);
        }
    }

    private static int FirstOn(Plate plate, ReadOnlySpan<double> raw, double zeroN, Instant touchDown)
    {
        double on = Math.Max(Math.Max(OnPart * plate.Levels.LoadN, 8 * plate.Levels.NoiseN), 10);
        int from = Math.Max((int)(touchDown.Sample - (BeforeS * plate.RateHz)), 0);
        int to = Math.Min((int)(touchDown.Sample + (WithinS * plate.RateHz)), raw.Length);
        for (int i = from; i < to; i++)
        {
            if (raw[i] - zeroN > on)
            {
                return i;
            }
        }

        return -1;
    }
}
