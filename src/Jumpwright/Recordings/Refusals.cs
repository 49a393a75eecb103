using Jumpwright.Quantities;

namespace Jumpwright.Recordings;

/// <summary>Every sentence with which reading refuses: what is wrong, where, and what to do.</summary>
internal static class Refusals
{
    public static Refusal Empty() =>
        RefusedFor.NotARecording.Refuse($"The file is empty: export the recording from the device again.");

    public static Refusal NotText(int line) =>
        RefusedFor.NotARecording.Refuse(
            $"Line {line}: the file is not text (it holds a zero or other control byte) and not C3D: export the recording as CSV in UTF-8, or as C3D."
        );

    public static Refusal LineTooLong(int line, int mostKiB) =>
        RefusedFor.NotARecording.Refuse(
            $"Line {line} is longer than {mostKiB} KiB, no line of a recording is: export the recording as CSV, one sample a line."
        );

    public static Refusal Utf16() =>
        RefusedFor.NotARecording.Refuse($"The file is UTF-16 text: save it as CSV in UTF-8.");

    public static Refusal NoHeader() =>
        RefusedFor.NotARecording.Refuse(
            $"The file has no header: the first line after any '#' lines must name the columns, such as time_s,force_N."
        );

    public static Refusal NoData(int headerLine) =>
        RefusedFor.NotARecording.Refuse(
            $"Line {headerLine}: a header without data: export the recording again, with its samples."
        );

    public static Refusal UnknownHeader(int line, string seen) =>
        RefusedFor.NotARecording.Refuse(
            $"Line {line}: the columns '{seen}' are not those of a recording: use time_s with force_N, time_s with force_left_N and "
                + $"force_right_N, contact_s with flight_s, or frame with event."
        );

    public static Refusal SemicolonsOrTabs(int line) =>
        RefusedFor.TableUnreadable.Refuse(
            $"Line {line}: the columns are separated by semicolons or tabs: save the file as CSV with commas between columns and a "
                + $"point in decimals."
        );

    public static Refusal MissingColumn(int line, string missing) =>
        RefusedFor.TableUnreadable.Refuse($"Line {line}: the column {missing} is missing: export it too.");

    public static Refusal RepeatedColumn(int line, string name) =>
        RefusedFor.TableUnreadable.Refuse($"Line {line}: the column {name} stands twice: keep the right one.");

    public static Refusal TooFewFields(int line, int seen, int expected) =>
        RefusedFor.SamplesMissing.Refuse(
            $"Line {line}: {seen} of {expected} values: a sample is missing; export the recording again."
        );

    public static Refusal TooManyFields(int line, int seen, int expected) =>
        RefusedFor.TableUnreadable.Refuse(
            $"Line {line}: {seen} values under {expected} columns: if decimals are written with a comma, export with a decimal point."
        );

    public static Refusal MissingValue(int line, string column) =>
        RefusedFor.SamplesMissing.Refuse(
            $"Line {line}: {column} is empty: a sample is missing; export the recording again without gaps."
        );

    public static Refusal NotANumber(int line, string column, string seen) =>
        RefusedFor.TableUnreadable.Refuse(
            $"Line {line}: {column} is '{seen}', not a number: export plain numbers with a decimal point."
        );

    public static Refusal BeyondReason(int line, string column, double value) =>
        RefusedFor.UnitWrong.Refuse(
            $"Line {line}: {column} is {value:G4}, more than any plate measures: check the unit and export again."
        );

    public static Refusal CutOff(int line) =>
        RefusedFor.CutOff.Refuse(
            $"Line {line}: the file ends in the middle of this line, so it was cut off: copy or export it again."
        );

    public static Refusal TooFewSamples(int count) =>
        RefusedFor.TooShort.Refuse($"Only {count} samples: too short for a recording; export it whole.");

    public static Refusal TooManySamples(int line, int limit) =>
        RefusedFor.TooLong.Refuse(
            $"Line {line}: more than {limit} samples: cut the recording to the stretch with the jumps."
        );

    public static Refusal RepeatedTime(int line, double timeS) =>
        RefusedFor.TimeUneven.Refuse(
            $"Line {line}: the time {timeS:0.######} s stands twice: export again with every sample once and enough decimals."
        );

    public static Refusal TimeRunsBack(int line, double timeS) =>
        RefusedFor.TimeUneven.Refuse(
            $"Line {line}: the time runs back to {timeS:0.######} s: export the recording again in order of time."
        );

    public static Refusal Gap(int line, double fromS, double toS) =>
        RefusedFor.SamplesMissing.Refuse(
            $"Line {line}: samples are missing between {fromS:0.####} s and {toS:0.####} s: export the recording again without gaps."
        );

    public static Refusal Irregular(int line, double timeS) =>
        RefusedFor.TimeUneven.Refuse(
            $"Line {line}: at {timeS:0.####} s the samples are not evenly spaced in time: export the recording at its own constant rate."
        );

    public static Refusal Rate(double rateHz) =>
        rateHz is > 0.15 and < 2.1
            ? RefusedFor.RateWrong.Refuse(
                $"The time stamps give {rateHz:0.###} samples a second: time_s looks like milliseconds; name the column time_ms or convert it."
            )
            : RefusedFor.RateWrong.Refuse(
                $"The time stamps give {rateHz:0.#} samples a second: 200 to 2000 are needed; record or export at such a rate."
            );

    public static Refusal InsertedSamples(int every, double rateHz) =>
        RefusedFor.RateWrong.Refuse(
            $"Only one sample in {every} was measured, {rateHz:0.#} a second; those between repeat it or lie on straight lines: 200 to 2000 are needed; record at such a rate and export at the device's own."
        );

    public static Refusal UnknownTask(int line, string seen) =>
        RefusedFor.TaskNotKnown.Refuse(
            $"Line {line}: the task '{seen}' is not known: write one of {string.Join(", ", JumpTasks.All)}."
        );

    public static Refusal ExternalLoad(int line, string seen) =>
        RefusedFor.LabelUnreadable.Refuse(
            $"Line {line}: external_load_kg '{seen}' is not a load from {0.0} to {400.0} kg: correct it, or leave it out without a load."
        );

    public static Refusal FramesPerSecond(int line, string seen) =>
        RefusedFor.LabelUnreadable.Refuse(
            $"Line {line}: frames_per_second '{seen}' is not a rate from 20 to 5000: write the capture rate of the camera (not the playback rate)."
        );

    public static Refusal NoFramesPerSecond() =>
        RefusedFor.FrameRateNotSaid.Refuse(
            $"Counted frames need the rate at which the camera took them: write it on the page Take in, in the column frames_per_second of trials.csv or as '# frames_per_second:' above the header (the capture rate, not the playback rate)."
        );

    public static Refusal Frame(int line, string seen) =>
        RefusedFor.TableUnreadable.Refuse(
            $"Line {line}: frame '{seen}' is not a whole number from 0: write the number of the picture."
        );

    public static Refusal FrameEvent(int line, string seen) =>
        RefusedFor.TableUnreadable.Refuse($"Line {line}: event '{seen}' is not known: write touch-down or take-off.");

    public static Refusal FrameOrder(int line, long frame) =>
        RefusedFor.TableUnreadable.Refuse(
            $"Line {line}: frame {frame} does not come after the one before it: write the events in order of time."
        );

    public static Refusal FrameAlternate(int line, string seen) =>
        RefusedFor.TableUnreadable.Refuse(
            $"Line {line}: two events '{seen}' follow each other: one between them is missing; write every touch-down and take-off."
        );

    public static Refusal FrameRateImplausible(int line, Sentence what) =>
        RefusedFor.FrameRateDoubted.Refuse(
            $"Line {line}: {what}: check the frame numbers up to this line, and that frames_per_second is the capture rate of the camera, not the playback rate."
        );

    public static Refusal FewEvents() =>
        RefusedFor.NoJump.Refuse(
            $"No complete contact or flight between the events: write at least a take-off and the touch-down after it."
        );

    public static Refusal IntervalImplausible(int line, Sentence what) =>
        RefusedFor.UnitWrong.Refuse(
            $"Line {line}: {what}: check the number and its unit; contact_s and flight_s are in seconds."
        );

    public static Refusal IntervalMissing(int line, string column) =>
        RefusedFor.SamplesMissing.Refuse(
            $"Line {line}: {column} is empty: only the first contact and the last flight may be."
        );
}
