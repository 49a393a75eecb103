using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>The room's door: history in, what limits the athlete out.</summary>
public static class Profiling
{
    /// <summary>The profile on that day; only what happened up to it counts.</summary>
    public static Profile Of(History history, LocalDate asOf) => throw new NotImplementedException();
}
