namespace Jumpwright.Planning.Searching;

/// <summary>
/// How far prices go along what their plans break: as far as would bring the bound down to what is hoped of it, if it were straight (after
/// Polyak). Less is hoped after each round that proved nothing better.
/// </summary>
/// <param name="hoped">The share of the bound that better prices are hoped to take off it at first.</param>
internal sealed class HopedStep(double hoped)
{
    private const double LessAfterAFailure = 0.6;

    private double _hoped = hoped;

    /// <summary>The last round proved nothing better.</summary>
    public void Failed() => _hoped *= LessAfterAFailure;

    /// <summary>The step for each part of the direction.</summary>
    /// <param name="now">What is proven at the prices of now.</param>
    /// <param name="least">The least that was proven at any.</param>
    /// <param name="length">The square of the direction's length.</param>
    public double Of(double now, double least, double length) => Math.Max(1, now - (least * (1 - _hoped))) / length;
}
