using System.Collections.Concurrent;
using System.Collections.Immutable;
using NodaTime;

namespace Jumpwright.App.Sharing;

/// <summary>
/// Who may come in from another device: one-time codes, paired devices, links to single cards. All of it ends with the
/// program; nothing of it is written down.
/// </summary>
public sealed class Doorkeeper(IClock clock)
{
    /// <summary>How long a code may be used.</summary>
    public static readonly Duration CodeLasts = Duration.FromMinutes(5);

    /// <summary>After so many wrong tries the code is void, and a new one is asked for at the laptop.</summary>
    public const int MostTries = 5;

    private readonly ConcurrentDictionary<string, PairedDevice> _devices = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, CardLink> _links = new(StringComparer.Ordinal);
    private readonly Lock _code = new();
    private (string Hash, Instant Until, int Tries)? _open;

    public ImmutableArray<PairedDevice> Devices => [.. _devices.Values.OrderBy(d => d.Since)];

    public ImmutableArray<CardLink> Links
    {
        get
        {
            Instant now = clock.GetCurrentInstant();
            return [.. _links.Values.Where(l => l.Ends > now).OrderBy(l => l.SessionId, StringComparer.Ordinal)];
        }
    }

    /// <summary>A new code; the one before it is void.</summary>
    public string NewCode()
    {
        string code = Secrets.Code();
        lock (_code)
        {
            _open = (Secrets.Hash(code), clock.GetCurrentInstant() + CodeLasts, 0);
        }

        return code;
    }

    /// <summary>The token for the device's cookie, or null where the code is wrong, used, or too old.</summary>
    public string? Pair(string typed, string name)
    {
        lock (_code)
        {
            if (_open is not var (hash, until, tries) || clock.GetCurrentInstant() > until)
            {
                return null;
            }

            if (!Secrets.Same(Secrets.Hash(Secrets.Clean(typed)), hash))
            {
                _open = tries + 1 >= MostTries ? null : (hash, until, tries + 1);
                return null;
            }

            _open = null;
        }

        string token = Secrets.Token();
        var device = new PairedDevice(Secrets.Hash(token), name, clock.GetCurrentInstant());
        _devices[device.Hash] = device;
        return token;
    }

    public bool IsPaired(string? token) =>
        token is { Length: > 0 and < 200 } && _devices.ContainsKey(Secrets.Hash(token));

    public bool Unpair(string hash) => _devices.TryRemove(hash, out _);

    /// <summary>A link to one card until that instant.</summary>
    public string NewLink(string sessionId, string athleteId, Instant ends)
    {
        string token = Secrets.Token();
        var link = new CardLink(Secrets.Hash(token), sessionId, athleteId, ends);
        _links[link.Hash] = link;
        return token;
    }

    /// <summary>What a link shows, while it holds.</summary>
    public CardLink? Follow(string token) =>
        token.Length < 200
        && _links.TryGetValue(Secrets.Hash(token), out CardLink? link)
        && clock.GetCurrentInstant() < link.Ends
            ? link
            : null;

    public bool Revoke(string hash) => _links.TryRemove(hash, out _);
}
