using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Jumpwright.Quantities;

namespace Jumpwright.Exercises;

/// <summary>
/// The shapes of an exercise's file and of its words in another language, known when the program is compiled: looking one up
/// by reflection takes a tenth of a second at every start. What a file leaves out is the default of its type here, whatever a
/// property is set to where it is declared.
/// </summary>
[JsonSerializable(typeof(ExerciseFile))]
[JsonSerializable(typeof(ExerciseWordsFile))]
internal sealed partial class ExerciseShapes : JsonSerializerContext
{
    private static readonly JsonSerializerOptions Rules = new(Embedded.Json)
    {
        TypeInfoResolver = new ExerciseShapes(),
    };

    /// <summary>How an exercise's file is read, under the rules of all our data files.</summary>
    public static JsonTypeInfo<ExerciseFile> File { get; } =
        (JsonTypeInfo<ExerciseFile>)Rules.GetTypeInfo(typeof(ExerciseFile));

    /// <summary>How an exercise's words in another language are read, under the same rules.</summary>
    public static JsonTypeInfo<ExerciseWordsFile> Words { get; } =
        (JsonTypeInfo<ExerciseWordsFile>)Rules.GetTypeInfo(typeof(ExerciseWordsFile));
}
