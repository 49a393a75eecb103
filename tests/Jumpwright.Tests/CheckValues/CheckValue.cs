namespace Jumpwright.Tests.CheckValues;

/// <summary>One row of the reference table: a formula's inputs, the value expected, its tolerance and its source.</summary>
public sealed record CheckValue(
    string Id,
    string Topic,
    string Inputs,
    double Expected,
    string Unit,
    double Tolerance,
    string Source
)
{
    /// <summary>The number after <c>name=</c> in the row's inputs.</summary>
    public double Number(string name) => double.Parse(Text(name).Split(' ')[0]);

    /// <summary>The numbers after <c>name=</c>, separated by blanks.</summary>
    public double[] Numbers(string name) =>
        [.. Text(name).Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(double.Parse)];

    /// <summary>The text after <c>name=</c> up to the next semicolon.</summary>
    public string Text(string name)
    {
        foreach (string part in Inputs.Split(';'))
        {
            int equals = part.IndexOf('=', StringComparison.Ordinal);
            if (equals > 0 && part.AsSpan(0, equals).Trim().SequenceEqual(name))
            {
                return part[(equals + 1)..].Trim();
            }
        }

        throw new KeyNotFoundException($"Row {Id} has no input '{name}': {Inputs}");
    }

    public override string ToString() => $"{Id} {Topic}: {Inputs} → {Expected} {Unit}";
}
