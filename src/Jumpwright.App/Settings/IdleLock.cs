using System.Collections.Concurrent;
using NodaTime;

namespace Jumpwright.App.Settings;

/// <summary>
/// Which devices are locked: each for itself, after so many minutes without a touch. The floor's own polling is no touch.
/// After some wrong words a device has to wait, each time longer.
/// </summary>
internal sealed class IdleLock(SettingsFile settings, IClock clock)
{
    /// <summary>What this machine is called here; no paired device's hash is empty.</summary>
    public const string ThisMachine = "";

    private const int FreeTries = 5;
    private readonly ConcurrentDictionary<string, Seen> _seen = new(StringComparer.Ordinal);

    /// <summary>Whether that device is locked now.</summary>
    public bool IsLocked(string device)
    {
        if (settings.Now.Lock is not { } word || (device == ThisMachine && !word.Here))
        {
            return false;
        }

        Seen seen = _seen.GetOrAdd(device, _ => new Seen(clock.GetCurrentInstant(), false, 0, Instant.MinValue));
        return seen.Locked || clock.GetCurrentInstant() - seen.Touched >= Duration.FromMinutes(word.Minutes);
    }

    /// <summary>Somebody works there.</summary>
    public void Touch(string device) =>
        _seen.AddOrUpdate(
            device,
            _ => new Seen(clock.GetCurrentInstant(), false, 0, Instant.MinValue),
            (_, seen) => seen with { Touched = clock.GetCurrentInstant() }
        );

    /// <summary>Locks that device at once.</summary>
    public void Lock(string device) =>
        _seen.AddOrUpdate(
            device,
            _ => new Seen(clock.GetCurrentInstant(), true, 0, Instant.MinValue),
            (_, seen) => seen with { Locked = true }
        );

    /// <summary>Opens that device with the word.</summary>
    /// <returns>Null when it is open; else a sentence.</returns>
    public string? Open(string device, string typed)
    {
        if (settings.Now.Lock is not { } word)
        {
            return null;
        }

        Instant now = clock.GetCurrentInstant();
        Seen seen = _seen.GetOrAdd(device, _ => new Seen(now, true, 0, Instant.MinValue));
        if (now < seen.NotBefore)
        {
            return $"Too many wrong tries: wait {Math.Ceiling((seen.NotBefore - now).TotalMinutes):0} min.";
        }

        if (word.Opens(typed))
        {
            _seen[device] = new Seen(now, false, 0, Instant.MinValue);
            return null;
        }

        int wrong = seen.Wrong + 1;
        Duration wait =
            wrong < FreeTries ? Duration.Zero : Duration.FromMinutes(Math.Min(60, 1 << (wrong - FreeTries)));
        _seen[device] = seen with { Locked = true, Wrong = wrong, NotBefore = now + wait };
        return "That is not the word.";
    }

    private sealed record Seen(Instant Touched, bool Locked, int Wrong, Instant NotBefore);
}
