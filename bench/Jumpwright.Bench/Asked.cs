namespace Jumpwright.Bench;

/// <summary>The options after a command: <c>--name value</c>.</summary>
internal sealed class Asked(string[] args)
{
    /// <summary>The whole number after <paramref name="option"/>, or the default where it is absent or no number.</summary>
    public int Number(string option, int otherwise)
    {
        int at = Array.IndexOf(args, option);
        return at >= 0 && at + 1 < args.Length && int.TryParse(args[at + 1], out int number) ? number : otherwise;
    }

    /// <summary>The word after <paramref name="option"/>, or null.</summary>
    public string? Word(string option)
    {
        int at = Array.IndexOf(args, option);
        return at >= 0 && at + 1 < args.Length ? args[at + 1] : null;
    }
}
