namespace Jumpwright.Quantities;

/// <summary>A source that a formula or threshold carries beside it.</summary>
/// <param name="Id">Kebab-case id in the bibliography.</param>
/// <param name="Text">Author, year, place, and what it supports, in our own words.</param>
/// <param name="Kind">What kind of authority it is.</param>
/// <param name="FromMemory">True while the value was not checked in the source itself.</param>
/// <param name="Doi">Digital object identifier without a prefix, where one is known.</param>
public sealed record Source(string Id, string Text, SourceKind Kind, bool FromMemory = false, string? Doi = null);
