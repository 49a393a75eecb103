using System.Runtime.CompilerServices;
using System.Text;

namespace Jumpwright.App.Api;

/// <summary>JSON of something that does not change, written once and kept for as long as that is.</summary>
/// <param name="write">Writes it.</param>
internal sealed class KeptText<T>(Func<T, string> write)
    where T : class
{
    private readonly ConditionalWeakTable<T, Lazy<byte[]>> _kept = [];

    /// <summary>Its text, UTF-8; who asks while it is being written waits for it.</summary>
    public byte[] Of(T of) => _kept.GetValue(of, o => new Lazy<byte[]>(() => Encoding.UTF8.GetBytes(write(o)))).Value;
}
