namespace Jumpwright.App.Commands;

/// <summary>What the help of one command teaches beyond its options.</summary>
/// <param name="Examples">Command lines that can be typed, each with what it does.</param>
/// <param name="ExitStatus">Each exit status and what it means.</param>
internal sealed record Lesson(
    IReadOnlyList<(string Line, string Does)> Examples,
    IReadOnlyList<(int Code, string Means)> ExitStatus
);
