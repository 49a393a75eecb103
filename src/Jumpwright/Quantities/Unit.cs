namespace Jumpwright.Quantities;

/// <summary>A unit of measure as it is written in files and JSON (SI). Not a dimension system: it names, it does not convert.</summary>
/// <param name="Symbol">The symbol, for example <c>m</c>, <c>N/m</c>; <c>1</c> for a pure number.</param>
public readonly record struct Unit(string Symbol)
{
    public static readonly Unit One = new("1");
    public static readonly Unit Metre = new("m");
    public static readonly Unit Second = new("s");
    public static readonly Unit Kilogram = new("kg");
    public static readonly Unit Newton = new("N");
    public static readonly Unit Watt = new("W");
    public static readonly Unit MetrePerSecond = new("m/s");
    public static readonly Unit NewtonPerMetre = new("N/m");
    public static readonly Unit NewtonPerSecond = new("N/s");
    public static readonly Unit NewtonSecond = new("N.s");
    public static readonly Unit Percent = new("%");

    public override string ToString() => Symbol;
}
