using Jumpwright.Athletes;
using Jumpwright.Quantities;

namespace Jumpwright.Safety;

/// <summary>A place that hurt, as far as it still counts on a day.</summary>
/// <param name="Site">As it was written, lower case, without the side; empty where nobody said.</param>
/// <param name="Side">Side.</param>
/// <param name="MayBeBone">True where pain there has no number that goes on, because nobody licensed has named another tissue.</param>
public sealed record SorePlace(string Site, Side Side, bool MayBeBone)
{
    /// <summary>The place as sentences name it.</summary>
    public Sentence Said => new BodySite(Site, Side).Said;
}
