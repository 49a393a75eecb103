namespace Jumpwright.Quantities;

/// <summary>Kit named in a sentence.</summary>
/// <param name="Id">For example <c>plyo-box</c>.</param>
public readonly record struct SaidKit(string Id)
{
    /// <summary>True where English names it by its id, as files do.</summary>
    public bool IsById { get; private init; }

    /// <summary>By its id, for example <c>plyo-box</c>.</summary>
    public static SaidKit ById(string id) => new(id) { IsById = true };

    public override string ToString() => IsById ? Id : Id.Replace('-', ' ');
}
