namespace Jumpwright.Quantities;

/// <summary>An exercise named in a sentence.</summary>
/// <param name="Id">Catalogue id.</param>
/// <param name="English">How the English sentence names it: by its name, or by its id as files have it.</param>
public readonly record struct SaidExercise(string Id, string English)
{
    /// <summary>By its id, for example <c>depth-jump</c>.</summary>
    public static SaidExercise ById(string id) => new(id, id);

    /// <summary>By its id in words, for example <c>depth jump</c>.</summary>
    public static SaidExercise InWords(string id) => new(id, id.Replace('-', ' '));

    public override string ToString() => English;
}
