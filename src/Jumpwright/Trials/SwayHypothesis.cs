namespace Jumpwright.Trials;

/// <summary>
/// What the slow force in standing may be: a motion of the centre of mass, which has its own velocity and is over when the
/// person moves on purpose; or a disturbance of the force that no motion explains, which goes on through every contact. A
/// recording alone seldom tells; where it does, its evidence weighs them.
/// </summary>
/// <param name="Moves">True: a motion. False: a disturbance, and the person stands perfectly still.</param>
/// <param name="Part">How likely it is beforehand.</param>
internal readonly record struct SwayHypothesis(bool Moves, double Part)
{
    /// <summary>How many sizes of sway are tried.</summary>
    public const int Sizes = 2;

    /// <summary>Sizes of sway against what shows in the still stretches.</summary>
    public static ReadOnlySpan<double> Scales => [0.7, 1.2];

    /// <summary>Physics speaks for a motion; plates and people do more than physics thinks of (house estimate).</summary>
    public static ReadOnlySpan<SwayHypothesis> All => Hypotheses;

    private static readonly SwayHypothesis[] Hypotheses = [new(true, 0.5), new(false, 0.5)];
}
