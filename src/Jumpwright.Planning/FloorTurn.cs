using System.Collections.Immutable;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>A turn as roll call places it.</summary>
/// <param name="Entry">As planned.</param>
/// <param name="Here">Who is left for it.</param>
/// <param name="Station">Where, with the kit of today.</param>
/// <param name="Start">From when, min.</param>
/// <param name="End">Until when, min; its start where nobody is left for it.</param>
internal sealed record FloorTurn(
    RotationEntry Entry,
    ImmutableArray<string> Here,
    string Station,
    double Start,
    double End
);
