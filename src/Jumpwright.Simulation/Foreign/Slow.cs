using Jumpwright.Simulation.Chance;

namespace Jumpwright.Simulation.Foreign;

/// <summary>A slow wander of unit variance: white noise through one pole (Uhlenbeck and Ornstein 1930; from memory).</summary>
internal sealed class Slow(SeededRandom random, double cornerHz, double stepS)
{
    private readonly double _keep = Math.Exp(-2 * Math.PI * cornerHz * stepS);
    private readonly double _new = Math.Sqrt(1 - Math.Exp(-4 * Math.PI * cornerHz * stepS));
    private double _value = random.Normal();

    public double Next() => _value = (_keep * _value) + (_new * random.Normal());
}
