namespace Jumpwright.Quantities;

/// <summary>Something that is said differently in another language and knows how, such as what an exercise is for.</summary>
public interface ISaid
{
    /// <summary>Its words in that language; its own where it has none in it.</summary>
    string In(string language);
}
