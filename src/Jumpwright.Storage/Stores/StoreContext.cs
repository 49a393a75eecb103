using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Jumpwright.Athletes;
using Jumpwright.Recordings;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.Storage.Stores;

/// <summary>
/// The store's tables (docs/store.md). Days, times and instants are ISO 8601 text, instants always UTC; words are the
/// words of the files; nothing is specific to one database but the driver.
/// </summary>
internal sealed class StoreContext(DbContextOptions<StoreContext> options) : DbContext(options)
{
    public DbSet<BatchRow> Batches => Set<BatchRow>();
    public DbSet<RawRow> Raw => Set<RawRow>();
    public DbSet<TableFileRow> TableFiles => Set<TableFileRow>();
    public DbSet<SquadRow> Squads => Set<SquadRow>();
    public DbSet<KitRow> Kit => Set<KitRow>();
    public DbSet<WindowRow> Windows => Set<WindowRow>();
    public DbSet<PracticeRow> Practices => Set<PracticeRow>();
    public DbSet<FixtureRow> Fixtures => Set<FixtureRow>();
    public DbSet<PolicyRow> Policies => Set<PolicyRow>();
    public DbSet<AthleteRow> Athletes => Set<AthleteRow>();
    public DbSet<CompletedRow> Completed => Set<CompletedRow>();
    public DbSet<ScreenRow> Screens => Set<ScreenRow>();
    public DbSet<SymptomRow> Symptoms => Set<SymptomRow>();
    public DbSet<RestrictionRow> Restrictions => Set<RestrictionRow>();
    public DbSet<ProblemRow> Problems => Set<ProblemRow>();
    public DbSet<RecordingRow> Recordings => Set<RecordingRow>();
    public DbSet<MeasurementRow> Measurements => Set<MeasurementRow>();
    public DbSet<TrialRow> Trials => Set<TrialRow>();
    public DbSet<MeasureRow> Measures => Set<MeasureRow>();
    public DbSet<ContactRow> Contacts => Set<ContactRow>();
    public DbSet<RemarkRow> Remarks => Set<RemarkRow>();
    public DbSet<PlanRow> Plans => Set<PlanRow>();
    public DbSet<JournalRow> Journal => Set<JournalRow>();

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        configurationBuilder.Properties<LocalDate>().HaveConversion<DayText>();
        configurationBuilder.Properties<LocalTime>().HaveConversion<TimeText>();
        configurationBuilder.Properties<Instant>().HaveConversion<InstantText>();
        configurationBuilder.Properties<ImmutableArray<string>>().HaveConversion<WordsText, WordsComparer>();
        configurationBuilder.Properties<JumpTask>().HaveConversion<TaskText>();
        configurationBuilder.Properties<Side>().HaveConversion<string>();
        configurationBuilder.Properties<Limb>().HaveConversion<string>();
        configurationBuilder.Properties<Device>().HaveConversion<string>();
        configurationBuilder.Properties<TrainingLevel>().HaveConversion<string>();
        configurationBuilder.Properties<IsoDayOfWeek>().HaveConversion<string>();
        configurationBuilder.Properties<ProblemWeight>().HaveConversion<string>();
        configurationBuilder.Properties<RemarkKind>().HaveConversion<string>();
        configurationBuilder.Properties<RefusedFor>().HaveConversion<string>();
    }

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        Table<BatchRow>(modelBuilder, "import_batch", b => b.HasKey(r => r.Number));
        Table<RawRow>(modelBuilder, "raw", b => b.HasKey(r => r.Sha256));
        Table<TableFileRow>(
            modelBuilder,
            "squad_file",
            b =>
            {
                b.HasKey(r => r.Name);
                b.HasOne<RawRow>().WithMany().HasForeignKey(r => r.Sha256).OnDelete(DeleteBehavior.Restrict);
            }
        );
        Table<SquadRow>(modelBuilder, "squad", b => b.HasKey(r => r.Id));
        Table<KitRow>(modelBuilder, "kit", b => b.HasKey(r => r.Id));
        Table<WindowRow>(modelBuilder, "training_window", b => b.HasKey(r => r.Position));
        Table<PracticeRow>(modelBuilder, "practice", b => b.HasKey(r => r.Position));
        Table<FixtureRow>(modelBuilder, "fixture", b => b.HasKey(r => r.Position));
        Table<PolicyRow>(modelBuilder, "policy", b => b.HasKey(r => r.Key));
        Table<AthleteRow>(modelBuilder, "athlete", b => b.HasKey(r => r.Id));
        Table<CompletedRow>(modelBuilder, "completed", b => b.HasKey(r => r.Position));
        Table<ScreenRow>(modelBuilder, "screen", b => b.HasKey(r => r.Position));
        Table<SymptomRow>(modelBuilder, "symptom", b => b.HasKey(r => r.Position));
        Table<RestrictionRow>(modelBuilder, "restriction", b => b.HasKey(r => r.Position));
        Table<ProblemRow>(modelBuilder, "problem", b => b.HasKey(r => r.Position));
        Table<RecordingRow>(
            modelBuilder,
            "recording",
            b =>
            {
                b.HasKey(r => r.File);
                b.HasIndex(r => r.Position);
                b.HasOne<RawRow>().WithMany().HasForeignKey(r => r.Sha256).OnDelete(DeleteBehavior.Restrict);
                b.HasOne<MeasurementRow>()
                    .WithMany()
                    .HasForeignKey(r => r.MeasurementId)
                    .OnDelete(DeleteBehavior.Restrict);
            }
        );
        Table<MeasurementRow>(
            modelBuilder,
            "measurement",
            b =>
            {
                b.HasKey(r => r.Id);
                b.HasIndex(r => r.AthleteId);
                b.HasOne<RawRow>().WithMany().HasForeignKey(r => r.Sha256).OnDelete(DeleteBehavior.Restrict);
                b.HasMany(r => r.Trials).WithOne().HasForeignKey(t => t.MeasurementId);
            }
        );
        Table<TrialRow>(
            modelBuilder,
            "trial",
            b =>
            {
                b.HasKey(r => new { r.MeasurementId, r.Number });
                b.HasMany(r => r.Measures).WithOne().HasForeignKey(m => new { m.MeasurementId, m.TrialNumber });
                b.HasMany(r => r.Contacts).WithOne().HasForeignKey(m => new { m.MeasurementId, m.TrialNumber });
                b.HasMany(r => r.Remarks).WithOne().HasForeignKey(m => new { m.MeasurementId, m.TrialNumber });
            }
        );
        Table<MeasureRow>(
            modelBuilder,
            "measure",
            b =>
            {
                b.HasKey(r => new
                {
                    r.MeasurementId,
                    r.TrialNumber,
                    r.Position,
                });
                b.HasIndex(r => r.Name);
            }
        );
        Table<ContactRow>(
            modelBuilder,
            "contact",
            b =>
                b.HasKey(r => new
                {
                    r.MeasurementId,
                    r.TrialNumber,
                    r.Position,
                })
        );
        Table<RemarkRow>(
            modelBuilder,
            "remark",
            b =>
                b.HasKey(r => new
                {
                    r.MeasurementId,
                    r.TrialNumber,
                    r.Kind,
                    r.Position,
                })
        );
        Table<PlanRow>(modelBuilder, "plan", b => b.HasKey(r => r.Number));
        Table<JournalRow>(
            modelBuilder,
            "journal",
            b =>
            {
                b.HasKey(r => r.Id);
                b.HasIndex(r => r.Number);
                b.HasIndex(r => r.AthleteId);
            }
        );
    }

    /// <summary>Tables and columns in lower case with underscores; keys are ours, never the database's.</summary>
    private static void Table<TRow>(ModelBuilder model, string name, Action<EntityTypeBuilder<TRow>> build)
        where TRow : class
    {
        EntityTypeBuilder<TRow> builder = model.Entity<TRow>();
        builder.ToTable(name);
        build(builder);
        foreach (IMutableProperty property in builder.Metadata.GetProperties())
        {
            property.SetColumnName(Underscored(property.Name));
            property.ValueGenerated = ValueGenerated.Never;
        }
    }

    private static string Underscored(string name)
    {
        var text = new System.Text.StringBuilder();
        foreach (char c in name)
        {
            if (char.IsUpper(c) && text.Length > 0)
            {
                text.Append('_');
            }

            text.Append(char.ToLower(c, CultureInfo.InvariantCulture));
        }

        return text.ToString();
    }

    private sealed class DayText()
        : ValueConverter<LocalDate, string>(
            d => LocalDatePattern.Iso.Format(d),
            s => LocalDatePattern.Iso.Parse(s).Value
        );

    private sealed class TimeText()
        : ValueConverter<LocalTime, string>(
            t => LocalTimePattern.ExtendedIso.Format(t),
            s => LocalTimePattern.ExtendedIso.Parse(s).Value
        );

    private sealed class InstantText()
        : ValueConverter<Instant, string>(
            i => InstantPattern.ExtendedIso.Format(i),
            s => InstantPattern.ExtendedIso.Parse(s).Value
        );

    private sealed class TaskText() : ValueConverter<JumpTask, string>(t => t.Id(), s => JumpTasks.Parse(s)!.Value);

    private sealed class WordsText()
        : ValueConverter<ImmutableArray<string>, string>(
            w => JsonSerializer.Serialize(w, (JsonSerializerOptions?)null),
            s => JsonSerializer.Deserialize<ImmutableArray<string>>(s, (JsonSerializerOptions?)null)
        );

    private sealed class WordsComparer()
        : ValueComparer<ImmutableArray<string>>((a, b) => a.SequenceEqual(b), a => a.Length, a => a);
}
