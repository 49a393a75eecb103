using Jumpwright.App.Wording;

namespace Jumpwright.App.Pages;

/// <summary>A form of the page Set up that was not taken: what is wrong where, and what was typed, so that it stands there again.</summary>
/// <param name="Form">athlete, window or kit.</param>
/// <param name="Field">The id of the field that is wrong.</param>
/// <param name="Sentence">What is wrong with it.</param>
/// <param name="Typed">All fields of the form.</param>
public sealed record SetUpFault(string Form, string Field, Piece Sentence, IFormCollection Typed)
{
    /// <summary>What was typed there, where it is this form.</summary>
    public string? In(string form, string name) =>
        form == Form && Typed.TryGetValue(name, out var typed) ? typed.ToString() : null;
}
