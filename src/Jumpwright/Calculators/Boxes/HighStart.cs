namespace Jumpwright.Calculators.Boxes;

/// <summary>Starts that take away the dip: pushing without absorbing.</summary>
public enum HighStart
{
    Seat,
    FootOnBox,
}
