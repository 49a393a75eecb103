using System.Text.Json;
using Jumpwright.App.Desk;

namespace Jumpwright.App.Settings;

/// <summary>
/// The settings beside the store, readable by their owner alone. They stay on this machine: a backup leaves them out, since a
/// hash in a file that travels can be tried for ever.
/// </summary>
internal sealed class SettingsFile
{
    public const string Name = "jumpwright-settings.json";

    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };
    private readonly string? _path;
    private volatile HouseSettings _now;

    private SettingsFile(string? path, HouseSettings now) => (_path, _now) = (path, now);

    public HouseSettings Now => _now;

    /// <summary>Where a damaged file is: it was put aside, and the pages are locked to nobody.</summary>
    public string? Trouble { get; private set; }

    /// <summary>The settings of a squad that is kept on disk; of one in memory they end with the program.</summary>
    public static SettingsFile For(OpenedSquad squad)
    {
        string? folder = squad.Folder ?? Path.GetDirectoryName(squad.Store.DatabaseFile);
        return folder is null ? new SettingsFile(null, HouseSettings.Standard) : At(Path.Combine(folder, Name));
    }

    public static SettingsFile At(string path)
    {
        if (!File.Exists(path))
        {
            return new SettingsFile(path, HouseSettings.Standard);
        }

        try
        {
            HouseSettings read =
                JsonSerializer.Deserialize<HouseSettings>(File.ReadAllBytes(path)) ?? HouseSettings.Standard;
            return new SettingsFile(path, read);
        }
        catch (Exception e) when (e is JsonException or IOException or UnauthorizedAccessException)
        {
            return new SettingsFile(path, HouseSettings.Standard)
            {
                Trouble = $"{Name} can't be read ({e.GetType().Name}), so the standard settings hold: set them again.",
            };
        }
    }

    /// <summary>Keeps the settings; once this returns they are on the disk.</summary>
    public void Keep(HouseSettings settings)
    {
        if (_path is not null)
        {
            string beside = _path + ".new";
            var options = new FileStreamOptions { Mode = FileMode.Create, Access = FileAccess.Write };
            if (!OperatingSystem.IsWindows())
            {
                options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
            }

            using (var to = new FileStream(beside, options))
            {
                JsonSerializer.Serialize(to, settings, Indented);
            }

            File.Move(beside, _path, overwrite: true);
        }

        Trouble = null;
        _now = settings;
    }
}
