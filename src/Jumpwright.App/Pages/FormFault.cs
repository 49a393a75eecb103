using Jumpwright.App.Wording;
using Microsoft.AspNetCore.Components;

namespace Jumpwright.App.Pages;

/// <summary>A form that was not taken: what is wrong where, and what was typed, so that it stands there again.</summary>
/// <param name="Form">Which form of the page.</param>
/// <param name="Field">The id of the field that is wrong.</param>
/// <param name="Sentence">What is wrong with it.</param>
/// <param name="Typed">All fields of the form.</param>
public sealed record FormFault(string Form, string Field, Piece Sentence, IFormCollection Typed)
{
    /// <summary>What was typed there, where it is this form.</summary>
    public string? In(string form, string name) =>
        form == Form && Typed.TryGetValue(name, out var typed) ? typed.ToString() : null;

    /// <summary>A length or mass that was typed there, in the units of the reader.</summary>
    public string? Amount(string form, string name, string unit) =>
        In(form, name) is { } typed
            ? TypedAmount.In(typed, unit, TypedAmount.UnitsOf(Typed[TypedAmount.Field]), Speech.Now.Units)
            : null;

    /// <summary>What is wrong with a field, to stand beside it; nothing where it is another.</summary>
    public MarkupString Beside(string field) =>
        field == Field ? new MarkupString($"<strong class=\"wrong\">{Piece.Marked([Sentence])}</strong>") : default;

    /// <summary>Whether that one was ticked, of several under one name.</summary>
    public bool Ticked(string form, string name, string value) =>
        form == Form && Typed.TryGetValue(name, out var typed) && typed.Contains(value);
}
