using Jumpwright.App.Desk;
using Parquet;
using Parquet.Schema;

namespace Jumpwright.App.Api;

/// <summary>The measures as a Parquet file: the same rows and names as the CSV.</summary>
internal static class MeasureParquet
{
    private const int RowsAGroup = 200_000;

    public static async Task<byte[]> Of(Workbook book, CancellationToken cancel)
    {
        var athlete = new DataField<string>("athlete");
        var date = new DataField<string>("date");
        var task = new DataField<string>("task");
        var file = new DataField<string>("file");
        var trial = new DataField<int>("trial");
        var device = new DataField<string>("device");
        var measure = new DataField<string>("measure");
        var value = new DataField<double>("value");
        var unit = new DataField<string>("unit");
        var uncertainty = new DataField<double>("standard_uncertainty");
        var method = new DataField<string>("method");
        var doubtful = new DataField<bool>("doubtful");
        var schema = new ParquetSchema(
            athlete,
            date,
            task,
            file,
            trial,
            device,
            measure,
            value,
            unit,
            uncertainty,
            method,
            doubtful
        );
        using var bytes = new MemoryStream();
        await using (ParquetWriter writer = await ParquetWriter.CreateAsync(schema, bytes, cancellationToken: cancel))
        {
            foreach (MeasureTable.Row[] rows in MeasureTable.Rows(book).Chunk(RowsAGroup))
            {
                using ParquetRowGroupWriter group = writer.CreateRowGroup();
                await Text(group, athlete, rows, r => r.Athlete);
                await Text(group, date, rows, r => r.Date);
                await Text(group, task, rows, r => r.Task);
                await Text(group, file, rows, r => r.File);
                await group.WriteAsync<int>(trial, rows.Select(r => r.Trial).ToArray(), cancellationToken: cancel);
                await Text(group, device, rows, r => r.Device);
                await Text(group, measure, rows, r => r.Measure);
                await group.WriteAsync<double>(value, rows.Select(r => r.Value).ToArray(), cancellationToken: cancel);
                await Text(group, unit, rows, r => r.Unit);
                await group.WriteAsync<double>(
                    uncertainty,
                    rows.Select(r => r.StandardUncertainty).ToArray(),
                    cancellationToken: cancel
                );
                await Text(group, method, rows, r => r.Method);
                await group.WriteAsync<bool>(
                    doubtful,
                    rows.Select(r => r.Doubtful).ToArray(),
                    cancellationToken: cancel
                );
            }
        }

        return bytes.ToArray();
    }

    private static Task Text(
        ParquetRowGroupWriter group,
        DataField field,
        MeasureTable.Row[] rows,
        Func<MeasureTable.Row, string> of
    ) => group.WriteAsync(field, rows.Select(of).ToArray());
}
