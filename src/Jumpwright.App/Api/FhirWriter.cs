using System.Buffers;
using System.IO.Pipelines;
using System.Text.Json;
using System.Text.Json.Serialization;
using Jumpwright.App.Contracts;
using Jumpwright.Athletes;
using Jumpwright.Quantities;

namespace Jumpwright.App.Api;

/// <summary>
/// Writes the bundle of <see cref="FhirObservations"/> without making its thousands of objects: the observations of one measure, method
/// and device differ by id, subject, day and two numbers, so one of them is serialised and the others are filled in.
/// </summary>
internal sealed class FhirWriter
{
    /// <summary>So many trials are written before they are given to the network.</summary>
    private const int Handful = 4;

    private static readonly JsonSerializerOptions Sparse = new()
    {
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    };

    private static readonly CutJson Frame = new(
        JsonSerializer.SerializeToUtf8Bytes(FhirObservations.BundleOf([0]), Sparse),
        "0"
    );

    /// <summary>By the place of the measure in its trial: trials of one task have the same measures in the same order.</summary>
    private readonly List<Same> _places = [];

    /// <summary>Writes them as one bundle.</summary>
    public async Task Write(IEnumerable<MeasuredTrial> trials, PipeWriter to, CancellationToken cancel)
    {
        to.Write(Frame[0]);
        bool first = true;
        int written = 0;
        foreach (MeasuredTrial trial in trials)
        {
            One(trial, to, ref first);
            if (++written % Handful == 0)
            {
                await to.FlushAsync(cancel);
            }
        }

        to.Write(Frame[1]);
        await to.FlushAsync(cancel);
    }

    private void One(MeasuredTrial trial, IBufferWriter<byte> to, ref bool first)
    {
        byte[] id = Encoded(FhirObservations.IdOf(trial));
        byte[] subject = Encoded(FhirObservations.SubjectOf(trial));
        byte[] day = Encoded(FhirObservations.DayOf(trial));
        for (int place = 0; place < trial.Trial.Measures.Length; place++)
        {
            Measure measure = trial.Trial.Measures[place];
            CutJson cut = CutOf(trial, measure, place);
            if (!first)
            {
                to.Write(","u8);
            }

            first = false;
            to.Write(cut[0]);
            to.Write(id);
            to.Write(cut[1]);
            to.Write(subject);
            to.Write(cut[2]);
            to.Write(day);
            to.Write(cut[3]);
            CutJson.Number(to, measure.Value);
            to.Write(cut[4]);
            CutJson.Number(to, measure.StandardUncertainty);
            to.Write(cut[5]);
        }
    }

    private CutJson CutOf(MeasuredTrial trial, Measure measure, int place)
    {
        bool doubtful = trial.Trial.Doubtful.Contains(measure.Name);
        if (place < _places.Count && _places[place].Is(measure, trial.Device, doubtful))
        {
            return _places[place].Cut;
        }

        object marked = FhirObservations.Entry(
            CutJson.Marked(measure),
            "@id@",
            "@subject@",
            "@day@",
            trial.Device,
            doubtful
        );
        var same = new Same(
            measure,
            trial.Device,
            doubtful,
            new CutJson(
                JsonSerializer.SerializeToUtf8Bytes(marked, Sparse),
                "@id@",
                "@subject@",
                "@day@",
                CutJson.Written1,
                CutJson.Written2
            )
        );
        while (_places.Count <= place)
        {
            _places.Add(same);
        }

        _places[place] = same;
        return same.Cut;
    }

    /// <summary>Words as the serialiser writes them between their quotation marks.</summary>
    private static byte[] Encoded(string words) => JsonEncodedText.Encode(words).EncodedUtf8Bytes.ToArray();

    private sealed record Same(Measure Measure, Device Device, bool Doubtful, CutJson Cut)
    {
        public bool Is(Measure measure, Device device, bool doubtful) =>
            doubtful == Doubtful
            && device == Device
            && measure.Name == Measure.Name
            && measure.Unit == Measure.Unit
            && measure.Method == Measure.Method;
    }
}
