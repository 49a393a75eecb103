using Jumpwright.Quantities;

namespace Jumpwright.Recordings.C3d;

/// <summary>Every sentence with which reading a C3D file refuses: what is wrong, where, and what to do.</summary>
internal static class C3dRefusals
{
    public static Refusal HeaderCut(int length) =>
        RefusedFor.CutOff.Refuse(
            $"The C3D file ends after {length} bytes, within its header of 512: copy or export it again."
        );

    public static Refusal ParametersOutside(int at) =>
        RefusedFor.CutOff.Refuse(
            $"Byte {at}: the C3D file's parameters lead out of the file, so it is damaged or cut off: copy or export it again."
        );

    public static Refusal ParameterOutside(string name, int at) =>
        RefusedFor.TableUnreadable.Refuse(
            $"Byte {at}: the C3D parameter '{name}' can't be read, so the file is damaged: copy or export it again."
        );

    public static Refusal ByteOrder(byte seen) =>
        RefusedFor.TableUnreadable.Refuse(
            $"The C3D file names processor {seen} for its byte order; 84 (Intel), 85 (DEC) and 86 (MIPS) are known: export it again."
        );

    public static Refusal Contradiction(Sentence what, double header, string parameter, double other) =>
        RefusedFor.TableUnreadable.Refuse(
            $"The C3D file's header says {header:0.###} {what}, but {parameter} {other:0.###}: export it again."
        );

    public static Refusal AnalogContradiction(double header, double other) =>
        RefusedFor.TableUnreadable.Refuse(
            $"The C3D file's header says {header:0.###} analog values a frame, but ANALOG:USED times samples a frame {other:0.###}: export it again."
        );

    public static Refusal NoAnalog() =>
        RefusedFor.NotARecording.Refuse(
            $"The C3D file holds no analog samples, so no force: export it with the force plates' analog data."
        );

    public static Refusal NoPlate() =>
        RefusedFor.NotARecording.Refuse(
            $"The C3D file names no force plate (FORCE_PLATFORM:USED): export it with its force plates."
        );

    public static Refusal NoRate(double frameRateHz, double analogRateHz) =>
        RefusedFor.RateWrong.Refuse(
            $"The C3D file gives a rate of {frameRateHz:0.###} frames and {analogRateHz:0.###} analog samples a second: export it again with its rates."
        );

    public static Refusal Rate(double rateHz) =>
        RefusedFor.RateWrong.Refuse(
            $"The C3D file holds {rateHz:0.#} analog samples a second: 200 to 2000 are needed; record or export at such a rate."
        );

    public static Refusal DataOutside(int block) =>
        RefusedFor.CutOff.Refuse(
            $"Block {block}: the C3D file's samples would begin outside the file, so it is damaged or cut off: copy or export it again."
        );

    public static Refusal NoData() =>
        RefusedFor.NotARecording.Refuse($"The C3D file has a header without data: export it again, with its samples.");

    public static Refusal CutOff(long frame, double frames, double seconds) =>
        RefusedFor.CutOff.Refuse(
            $"The C3D file ends in frame {frame} of {frames:0}, after {seconds:0.###} s, so it was cut off: copy or export it again."
        );

    public static Refusal TooManySamples(long samples, int limit) =>
        RefusedFor.TooLong.Refuse(
            $"The C3D file holds {samples} samples of each channel, more than {limit}: cut it to the stretch with the jumps."
        );

    public static Refusal Missing(string parameter, int plate) =>
        RefusedFor.TableUnreadable.Refuse(
            $"The C3D file gives no {parameter} for force plate {plate}: export it again with its force plates."
        );

    public static Refusal PlateType(int plate, double type) =>
        RefusedFor.TableUnreadable.Refuse(
            $"Force plate {plate} of the C3D file is of type {type:0}; types 1 to 4 are read: export it as type 2 (forces and moments)."
        );

    public static Refusal Corners(int plate) =>
        RefusedFor.TableUnreadable.Refuse(
            $"The corners of force plate {plate} in the C3D file do not tell which way is up (absent, without area, or the plate leans): set them and export again."
        );

    public static Refusal Channel(int plate, int channel, int channels) =>
        RefusedFor.TableUnreadable.Refuse(
            $"Force plate {plate} of the C3D file takes its force from channel {channel}, but there are channels 1 to {channels}: export it again."
        );

    public static Refusal Unit(int plate, int channel, string unit) =>
        RefusedFor.UnitWrong.Refuse(
            $"Channel {channel}, of force plate {plate} in the C3D file, is in '{unit}', no unit of force that is known: export it in N."
        );

    public static Refusal Scale(int plate, int channel) =>
        RefusedFor.TableUnreadable.Refuse(
            $"The scale or offset of channel {channel}, of force plate {plate} in the C3D file, is not a number: export it again."
        );

    public static Refusal NoSuchPlate(int plate, int used) =>
        RefusedFor.PlatesNotSaid.Refuse(
            $"Plate {plate} is asked for, but the C3D file has {used}: correct plates in trials.csv."
        );

    public static Refusal WhichPlates(int used, int[] loaded) =>
        RefusedFor.PlatesNotSaid.Refuse(
            $"The C3D file has {used} force plates, and {(loaded.Length == 0 ? Sentence.Of($"none is seen to carry load") : Sentence.Of($"{string.Join(", ", loaded)} carry load"))}: "
                + $"write in the column plates of trials.csv which to measure, such as 3, or 1+2 for the left and the right foot."
        );

    public static Refusal BeyondReason(int plate, double forceN, double timeS) =>
        RefusedFor.UnitWrong.Refuse(
            $"At {timeS:0.###} s force plate {plate} of the C3D file gives {forceN:G4} N, more than any plate measures: check its scale and unit and export again."
        );
}
