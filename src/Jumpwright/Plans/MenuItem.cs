using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Plans;

/// <summary>One exercise one athlete may do in one session, how, and what it is worth.</summary>
/// <param name="SessionId">Which session.</param>
/// <param name="Dose">How it would be done.</param>
/// <param name="FirstSetValue">Objective points of the first set; not negative.</param>
/// <param name="FurtherSetValue">Objective points of each further set; at most that of the first.</param>
/// <param name="Because">Why it is wished.</param>
public sealed record MenuItem(
    string SessionId,
    Dose Dose,
    double FirstSetValue,
    double FurtherSetValue,
    ImmutableArray<string> Because
);
