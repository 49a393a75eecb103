namespace Jumpwright.Quantities;

/// <summary>A session named in a sentence: in files by its id, to people by its day.</summary>
/// <param name="Id">For example <c>2027-01-05-am</c>.</param>
public readonly record struct SaidSession(string Id)
{
    public override string ToString() => Id;
}
