using System.Text;
using Jumpwright.Quantities;

namespace Jumpwright.Recordings.C3d;

/// <summary>The parameter section of a C3D file: groups, and under each its parameters. What is taken lies within the file.</summary>
internal sealed class C3dParameters
{
    private readonly Dictionary<string, C3dParameter> _found = new(StringComparer.Ordinal);

    /// <summary>
    /// Where an entry points out of the section, and so ends it, though the section should have ended otherwise; else null.
    /// Some writers leave such a last pointer.
    /// </summary>
    public int? LeadsOutAt { get; private set; }

    /// <summary>Walks the section.</summary>
    /// <param name="file">The whole file.</param>
    /// <param name="at">Position after the section's four-byte head.</param>
    public static Outcome<C3dParameters> Read(C3dBytes file, int at)
    {
        int blocks = file.File[at - 2];
        int end = blocks == 0 ? file.Length : Math.Min(file.Length, at - 4 + (blocks * 512));
        int? leadsOut = null;
        var groups = new Dictionary<int, string>();
        var parameters = new List<C3dParameter>();
        while (true)
        {
            if (at + 2 > file.Length)
            {
                return C3dRefusals.ParametersOutside(at);
            }

            int nameLength = Math.Abs((int)(sbyte)file.File[at]);
            int id = (sbyte)file.File[at + 1];
            if (nameLength == 0 || id == 0)
            {
                break;
            }

            int after = at + 2 + nameLength;
            if (after + 4 > file.Length)
            {
                return C3dRefusals.ParametersOutside(at);
            }

            string name = Encoding.Latin1.GetString(file.File.Slice(at + 2, nameLength)).Trim().ToUpperInvariant();
            int next = file.Word(after);
            if (id < 0)
            {
                groups[-id] = name;
            }
            else
            {
                Outcome<C3dParameter> read = One(file, id, name, after + 2);
                if (!read.TryGet(out C3dParameter? parameter, out Refusal? refusal))
                {
                    return refusal;
                }

                parameters.Add(parameter);
            }

            if (next == 0)
            {
                break;
            }

            if (next < 3)
            {
                return C3dRefusals.ParametersOutside(after);
            }

            at = after + next;
            if (at >= end && at < file.Length)
            {
                leadsOut = at == end ? null : after;
                break;
            }
        }

        var all = new C3dParameters { LeadsOutAt = leadsOut };
        foreach (C3dParameter parameter in parameters)
        {
            if (groups.TryGetValue(parameter.Group, out string? group))
            {
                all._found[group + ":" + parameter.Name] = parameter;
            }
        }

        return all;
    }

    public C3dParameter? Find(string name) => _found.GetValueOrDefault(name);

    /// <summary>The numbers of a parameter, or null where it is absent or holds none.</summary>
    /// <param name="file">The whole file.</param>
    /// <param name="name">Group and name, as <c>POINT:RATE</c>.</param>
    /// <param name="signed">Whether words of 16 bits have a sign.</param>
    public double[]? Numbers(C3dBytes file, string name, bool signed = false)
    {
        if (Find(name) is not { Type: 1 or 2 or 4 } found)
        {
            return null;
        }

        var numbers = new double[found.Count];
        for (int i = 0; i < numbers.Length; i++)
        {
            int at = found.At + (i * found.Type);
            numbers[i] = found.Type switch
            {
                4 => file.Float(at),
                2 => signed ? (short)file.Word(at) : file.Word(at),
                _ => file.File[at],
            };
        }

        return numbers.Length == 0 ? null : numbers;
    }

    /// <summary>The first number of a parameter, or null.</summary>
    public double? Number(C3dBytes file, string name) => Numbers(file, name)?[0];

    /// <summary>The texts of a parameter, without the blanks round them; empty where it is absent.</summary>
    public string[] Texts(C3dBytes file, string name)
    {
        if (Find(name) is not { Type: -1, Count: > 0 } found)
        {
            return [];
        }

        int length = found.Dimensions.Length == 0 ? 1 : found.Dimensions[0];
        var texts = new string[found.Count / length];
        for (int i = 0; i < texts.Length; i++)
        {
            texts[i] = Encoding.Latin1.GetString(file.File.Slice(found.At + (i * length), length)).Trim(' ', '\0');
        }

        return texts;
    }

    /// <summary>Whether analog samples and offsets of 16 bits are without sign; with sign is the format's default.</summary>
    public bool IsUnsigned(C3dBytes file) =>
        Texts(file, "ANALOG:FORMAT").Any(t => t.StartsWith("UNSIGNED", StringComparison.OrdinalIgnoreCase));

    /// <summary>
    /// The values of a list that has one entry for each channel. Dimensions are bytes, so a list of more than 255 goes on in
    /// NAME2, NAME3 and so on.
    /// </summary>
    public double[] ChannelNumbers(C3dBytes file, string name, bool signed)
    {
        double[] values = Numbers(file, name, signed) ?? [];
        for (int more = 2; more < 10 && Numbers(file, name + more, signed) is { } next; more++)
        {
            values = [.. values, .. next];
        }

        return values;
    }

    /// <inheritdoc cref="ChannelNumbers"/>
    public string[] ChannelTexts(C3dBytes file, string name)
    {
        string[] texts = Texts(file, name);
        for (int more = 2; more < 10 && Texts(file, name + more) is { Length: > 0 } next; more++)
        {
            texts = [.. texts, .. next];
        }

        return texts;
    }

    private static Outcome<C3dParameter> One(C3dBytes file, int group, string name, int at)
    {
        int type = (sbyte)file.File[at];
        int dimensions = file.File[at + 1];
        int data = at + 2 + dimensions;
        if (dimensions > 7 || data > file.Length)
        {
            return C3dRefusals.ParameterOutside(Fields.Shown(name), at);
        }

        var sizes = new int[dimensions];
        long count = 1;
        for (int i = 0; i < dimensions; i++)
        {
            sizes[i] = file.File[at + 2 + i];
            count *= sizes[i];
        }

        return type is -1 or 1 or 2 or 4 && data + (count * Math.Abs(type)) <= file.Length
            ? new C3dParameter(group, name, type, sizes, data, (int)count)
            : C3dRefusals.ParameterOutside(Fields.Shown(name), at);
    }
}
