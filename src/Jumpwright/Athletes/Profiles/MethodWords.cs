using Jumpwright.Quantities;

namespace Jumpwright.Athletes.Profiles;

/// <summary>Methods of heights and indices as sentences name them; any other stands as it is written.</summary>
internal static class MethodWords
{
    internal static Sentence Said(string method) =>
        method switch
        {
            "impulse-momentum" => $"impulse-momentum",
            "flight-time" => $"flight-time",
            "half-sine from contact and flight time" => $"half-sine from contact and flight time",
            "peak force over greatest fall" => $"peak force over greatest fall",
            "flight over contact" => $"flight over contact",
            _ => $"{method}",
        };
}
