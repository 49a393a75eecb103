using Jumpwright.Athletes;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Plans;

/// <summary>A session that can be filled.</summary>
/// <param name="Id">For example <c>2027-01-05-am</c>.</param>
/// <param name="Date">Local day.</param>
/// <param name="Start">Local start.</param>
/// <param name="Minutes">Length, min.</param>
/// <param name="StartUtc">Start as an instant; recovery is counted in UTC.</param>
public sealed record SessionSlot(string Id, LocalDate Date, LocalTime Start, int Minutes, Instant StartUtc)
{
    /// <summary>What is jumped on, wherever the session is moved to; null when it is not said.</summary>
    public Surface? Surface { get; init; }

    /// <summary>How sentences name it.</summary>
    public SaidSession Said => new(Id);

    public Instant EndUtc => StartUtc + Duration.FromMinutes(Minutes);

    /// <summary>What a session of that day and start is called, for example <c>2027-01-05-am</c>: before noon am, from noon on pm.</summary>
    public static string IdOf(LocalDate day, LocalTime start) =>
        $"{day:uuuu-MM-dd}-{(start < LocalTime.Noon ? "am" : "pm")}";
}
