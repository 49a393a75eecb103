namespace Jumpwright.App.Wording;

/// <summary>One thing that a number comes from.</summary>
/// <param name="Name">What is asked.</param>
/// <param name="Is">What it is.</param>
/// <param name="IsEnglish">True for the core's own words, which are English whatever the page is written in.</param>
public sealed record OriginLine(string Name, string Is, bool IsEnglish = false);
