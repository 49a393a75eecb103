using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Jumpwright.Quantities;

namespace Jumpwright.Exercises;

/// <summary>
/// The shape of an exercise's file, known when the program is compiled: looking it up by reflection takes a tenth of a second at
/// every start. What a file leaves out is the default of its type here, whatever a property is set to where it is declared.
/// </summary>
[JsonSerializable(typeof(ExerciseFile))]
internal sealed partial class ExerciseShapes : JsonSerializerContext
{
    /// <summary>How an exercise's file is read, under the rules of all our data files.</summary>
    public static JsonTypeInfo<ExerciseFile> File { get; } =
        (JsonTypeInfo<ExerciseFile>)
            new JsonSerializerOptions(Embedded.Json) { TypeInfoResolver = new ExerciseShapes() }.GetTypeInfo(
                typeof(ExerciseFile)
            );
}
