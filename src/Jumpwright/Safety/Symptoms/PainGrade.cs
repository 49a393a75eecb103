namespace Jumpwright.Safety.Symptoms;

/// <summary>What a pain leaves open on its tissue.</summary>
internal enum PainGrade
{
    Fine,
    Caution,
    Nothing,
}
