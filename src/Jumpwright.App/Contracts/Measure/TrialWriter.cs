using System.Buffers;
using System.IO.Pipelines;
using System.Text.Json;
using Jumpwright.Athletes;
using Jumpwright.Quantities;

namespace Jumpwright.App.Contracts;

/// <summary>
/// Writes trials as <see cref="TrialJson"/> without an object for each of their measures, of which two numbers differ from trial to
/// trial: one is serialised, and the others are filled in.
/// </summary>
internal sealed class TrialWriter
{
    /// <summary>So many trials are written before they are given to the network.</summary>
    private const int Handful = 16;

    private readonly List<(Measure Measure, CutJson Cut)> _places = [];

    /// <summary>Writes them as one array.</summary>
    public async Task Write(IEnumerable<MeasuredTrial> trials, PipeWriter to, CancellationToken cancel)
    {
        to.Write("["u8);
        bool first = true;
        int written = 0;
        foreach (MeasuredTrial trial in trials)
        {
            if (!first)
            {
                to.Write(","u8);
            }

            first = false;
            One(trial, to);
            if (++written % Handful == 0)
            {
                await to.FlushAsync(cancel);
            }
        }

        to.Write("]"u8);
        await to.FlushAsync(cancel);
    }

    private void One(MeasuredTrial trial, IBufferWriter<byte> to)
    {
        // Everything but the measures, which stand between two braces of their own. Words that somebody wrote come before them and can't
        // hold that mark: their quotation marks are escaped.
        byte[] around = ContractJson.Bytes(TrialJson.WithoutMeasures(trial));
        int at = around.AsSpan().LastIndexOf("\"measures\":{}"u8) + "\"measures\":{"u8.Length;
        to.Write(around.AsSpan(0, at));
        for (int place = 0; place < trial.Trial.Measures.Length; place++)
        {
            Measure measure = trial.Trial.Measures[place];
            CutJson cut = CutOf(measure, place);
            if (place > 0)
            {
                to.Write(","u8);
            }

            to.Write(cut[0]);
            CutJson.Number(to, measure.Value);
            to.Write(cut[1]);
            CutJson.Number(to, measure.StandardUncertainty);
            to.Write(cut[2]);
        }

        to.Write(around.AsSpan(at));
    }

    private CutJson CutOf(Measure measure, int place)
    {
        if (
            place < _places.Count
            && _places[place] is var (like, there)
            && measure.Name == like.Name
            && measure.Unit == like.Unit
            && measure.Method == like.Method
        )
        {
            return there;
        }

        byte[] name = JsonSerializer.SerializeToUtf8Bytes(measure.Name, ContractJson.OneLine);
        byte[] value = ContractJson.Bytes(MeasureJson.Of(CutJson.Marked(measure)));
        var cut = new CutJson([.. name, (byte)':', .. value], CutJson.Written1, CutJson.Written2);
        while (_places.Count <= place)
        {
            _places.Add((measure, cut));
        }

        _places[place] = (measure, cut);
        return cut;
    }
}
