namespace Jumpwright.Quantities;

/// <summary>A number in a sentence that is written out already, with its decimals: <c>0.29 ± 0.02</c>.</summary>
/// <param name="Written">With decimal points.</param>
public readonly record struct SaidNumber(string Written) : ISaid
{
    public string In(string language) => Numerals.Write(Written, language);

    public override string ToString() => Written;
}
