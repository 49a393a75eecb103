namespace Jumpwright.Trials;

/// <summary>
/// What the slow force in standing may be: a motion of the centre of mass, which has its own velocity and is over when the
/// person moves on purpose; or a disturbance of the force that no motion explains, which goes on through every contact. A
/// recording alone seldom tells; where it does, its evidence weighs them.
/// </summary>
/// <param name="Moves">True: a motion. False: a disturbance, and the person stands perfectly still.</param>
/// <param name="Scale">Size against what shows in the still stretches.</param>
/// <param name="Colour">Power falls as frequency to the minus this.</param>
internal readonly record struct SwayHypothesis(bool Moves, double Scale, double Colour)
{
    /// <summary>Physics speaks for a motion; plates and people do more than physics thinks of (house estimate).</summary>
    private const double MovesPrior = 0.5;

    public static SwayHypothesis[] All { get; } =
    [
        .. new[] { true, false }.SelectMany(moves =>
            new[] { 0.7, 1.2 }.SelectMany(scale =>
                new[] { 1.15 }.Select(colour => new SwayHypothesis(moves, scale, colour))
            )
        ),
    ];

    public double LogPrior => Math.Log(Moves ? MovesPrior : 1 - MovesPrior);
}
