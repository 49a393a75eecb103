using System.Reflection;
using System.Reflection.Emit;
using System.Text;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.Outside.Wording;

/// <summary>Every template of a <see cref="Sentence"/> that an assembly makes, read from its instructions: none can be forgotten in a list.</summary>
internal static class TemplatesInCode
{
    private const BindingFlags Everything =
        BindingFlags.Public
        | BindingFlags.NonPublic
        | BindingFlags.Static
        | BindingFlags.Instance
        | BindingFlags.DeclaredOnly;

    private static readonly Dictionary<short, OpCode> Codes = typeof(OpCodes)
        .GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(f => (OpCode)f.GetValue(null)!)
        .ToDictionary(c => c.Value);

    public static HashSet<string> Of(Assembly assembly)
    {
        HashSet<string> found = new(StringComparer.Ordinal);
        foreach (Type type in assembly.GetTypes().Where(t => t != typeof(Sentence)))
        {
            foreach (
                MethodBase method in type.GetMethods(Everything)
                    .Cast<MethodBase>()
                    .Concat(type.GetConstructors(Everything))
            )
            {
                if (method.GetMethodBody()?.GetILAsByteArray() is { } instructions)
                {
                    Read(method, instructions, found);
                }
            }
        }

        return found;
    }

    private static void Read(MethodBase method, byte[] il, HashSet<string> found)
    {
        var open = new Stack<Open>();
        string? text = null;
        int last = 0;
        int before = 0;
        for (int at = 0; at < il.Length; )
        {
            short value = il[at++];
            if (value == 0xFE)
            {
                value = (short)(0xFE00 | il[at++]);
            }

            OpCode code = Codes[value];
            int operand = at;
            at += Size(code, il, at);
            if (code == OpCodes.Ldstr)
            {
                text = method.Module.ResolveString(BitConverter.ToInt32(il, operand));
                continue;
            }

            if (Number(code, il, operand) is { } number)
            {
                (before, last) = (last, number);
                continue;
            }

            if (
                code == OpCodes.Newobj
                && Called(method, il, operand) is { } made
                && made.DeclaringType == typeof(Sentence)
            )
            {
                open.Push(new Open(before, last));
            }
            else if (
                (code == OpCodes.Call || code == OpCodes.Callvirt)
                && open.Count > 0
                && Called(method, il, operand) is { } called
                && called.DeclaringType == typeof(Sentence)
            )
            {
                switch (called.Name)
                {
                    case nameof(Sentence.AppendLiteral):
                        open.Peek().Say(text!);
                        break;
                    case nameof(Sentence.AppendFormatted):
                        open.Peek().Fill(called.GetParameters().Length == 2 ? text : null);
                        break;
                    default:
                        break;
                }
            }

            while (open.Count > 0 && open.Peek().IsWhole)
            {
                found.Add(open.Pop().Template);
            }
        }

        if (open.Count > 0)
        {
            throw new InvalidOperationException(
                $"{method.DeclaringType}.{method.Name} makes a sentence this can't read."
            );
        }
    }

    private static MethodBase? Called(MethodBase method, byte[] il, int operand)
    {
        Type[]? ofType = method.DeclaringType is { IsGenericType: true } type ? type.GetGenericArguments() : null;
        Type[]? ofMethod = method.IsGenericMethod ? method.GetGenericArguments() : null;
        return method.Module.ResolveMethod(BitConverter.ToInt32(il, operand), ofType, ofMethod);
    }

    private static int? Number(OpCode code, byte[] il, int operand) =>
        code == OpCodes.Ldc_I4_S ? (sbyte)il[operand]
        : code == OpCodes.Ldc_I4 ? BitConverter.ToInt32(il, operand)
        : code.Value >= OpCodes.Ldc_I4_0.Value && code.Value <= OpCodes.Ldc_I4_8.Value
            ? code.Value - OpCodes.Ldc_I4_0.Value
        : null;

    private static int Size(OpCode code, byte[] il, int at) =>
        code.OperandType switch
        {
            OperandType.InlineNone => 0,
            OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
            OperandType.InlineVar => 2,
            OperandType.InlineI8 or OperandType.InlineR => 8,
            OperandType.InlineSwitch => 4 + (4 * BitConverter.ToInt32(il, at)),
            _ => 4,
        };

    /// <summary>A template that is being read: the compiler says beforehand how many letters and holes it has.</summary>
    private sealed class Open(int letters, int holes)
    {
        private readonly StringBuilder _template = new();
        private int _letters;
        private int _holes;

        public bool IsWhole => _letters == letters && _holes == holes;

        public string Template => _template.ToString();

        public void Say(string words)
        {
            _letters += words.Length;
            _template.Append(
                words.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal)
            );
        }

        public void Fill(string? format) =>
            _template.Append('{').Append(_holes++).Append(format is null ? "" : ":" + format).Append('}');
    }
}
