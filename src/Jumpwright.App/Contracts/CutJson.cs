using System.Buffers;
using System.Buffers.Text;
using System.Globalization;
using System.Text;
using Jumpwright.Quantities;

namespace Jumpwright.App.Contracts;

/// <summary>
/// JSON of one shape that is written many times over: an object with marks in it is serialised once and cut at its marks, so that
/// what is written afterwards is what the serialiser writes, for the price of copying.
/// </summary>
internal sealed class CutJson
{
    private readonly byte[][] _pieces;

    /// <summary>Cuts.</summary>
    /// <param name="json">The object as it was serialised, each mark in it once and in this order.</param>
    /// <param name="marks">What stands where something is filled in.</param>
    public CutJson(ReadOnlySpan<byte> json, params ReadOnlySpan<string> marks)
    {
        _pieces = new byte[marks.Length + 1][];
        for (int i = 0; i < marks.Length; i++)
        {
            byte[] mark = Encoding.UTF8.GetBytes(marks[i]);
            int at = json.IndexOf(mark);
            if (at < 0)
            {
                throw new ArgumentException($"There is no '{marks[i]}' where it is expected.", nameof(marks));
            }

            _pieces[i] = json[..at].ToArray();
            json = json[(at + mark.Length)..];
        }

        _pieces[^1] = json.ToArray();
    }

    /// <summary>A number that stands for one that is filled in, and how it is written.</summary>
    public const double Mark1 = 1.2345678901234567E+300;
    public static readonly string Written1 = Mark1.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>Another one.</summary>
    public const double Mark2 = 2.3456789012345678E+301;
    public static readonly string Written2 = Mark2.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>A measure whose two numbers are the marks.</summary>
    public static Measure Marked(Measure measure) => new(measure.Name, Mark1, measure.Unit, Mark2, measure.Method);

    /// <summary>The piece before the mark of that number, from 0; the last one stands behind the last mark.</summary>
    public ReadOnlySpan<byte> this[int piece] => _pieces[piece];

    /// <summary>A number as the serialiser writes it.</summary>
    public static void Number(IBufferWriter<byte> to, double value)
    {
        const int Longest = 32;
        Utf8Formatter.TryFormat(value, to.GetSpan(Longest), out int written);
        to.Advance(written);
    }
}
