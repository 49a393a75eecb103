namespace Jumpwright.Safety.Rules;

/// <summary>Exercises as a sentence lists them.</summary>
internal static class Listed
{
    /// <summary>Ids in words and in order, for example <c>ankle bounce, low box jump</c>.</summary>
    public static string Of(IEnumerable<string> exerciseIds) =>
        string.Join(", ", exerciseIds.Order(StringComparer.Ordinal).Select(id => id.Replace('-', ' ')));
}
