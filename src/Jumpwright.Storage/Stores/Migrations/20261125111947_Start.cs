using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Jumpwright.Storage.Stores.Migrations
{
    /// <inheritdoc />
    public partial class Start : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "athlete",
                columns: table => new
                {
                    id = table.Column<string>(type: "TEXT", nullable: false),
                    position = table.Column<int>(type: "INTEGER", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    birth_date = table.Column<string>(type: "TEXT", nullable: true),
                    body_mass_kg = table.Column<double>(type: "REAL", nullable: true),
                    stature_m = table.Column<double>(type: "REAL", nullable: true),
                    sport = table.Column<string>(type: "TEXT", nullable: true),
                    level = table.Column<string>(type: "TEXT", nullable: false),
                    operation_site = table.Column<string>(type: "TEXT", nullable: true),
                    operation_date = table.Column<string>(type: "TEXT", nullable: true),
                    operation_side = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_athlete", x => x.id);
                }
            );

            migrationBuilder.CreateTable(
                name: "completed",
                columns: table => new
                {
                    position = table.Column<int>(type: "INTEGER", nullable: false),
                    athlete_id = table.Column<string>(type: "TEXT", nullable: false),
                    date = table.Column<string>(type: "TEXT", nullable: false),
                    session_id = table.Column<string>(type: "TEXT", nullable: false),
                    exercise_id = table.Column<string>(type: "TEXT", nullable: false),
                    sets = table.Column<int>(type: "INTEGER", nullable: false),
                    reps = table.Column<int>(type: "INTEGER", nullable: false),
                    contacts = table.Column<int>(type: "INTEGER", nullable: false),
                    landing_faults = table.Column<int>(type: "INTEGER", nullable: true),
                    pain_during = table.Column<double>(type: "REAL", nullable: true),
                    pain_next_morning = table.Column<double>(type: "REAL", nullable: true),
                    effort_rpe = table.Column<double>(type: "REAL", nullable: true),
                    drop_height_m = table.Column<double>(type: "REAL", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_completed", x => x.position);
                }
            );

            migrationBuilder.CreateTable(
                name: "fixture",
                columns: table => new
                {
                    position = table.Column<int>(type: "INTEGER", nullable: false),
                    date = table.Column<string>(type: "TEXT", nullable: false),
                    start = table.Column<string>(type: "TEXT", nullable: true),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_fixture", x => x.position);
                }
            );

            migrationBuilder.CreateTable(
                name: "import_batch",
                columns: table => new
                {
                    number = table.Column<int>(type: "INTEGER", nullable: false),
                    fingerprint = table.Column<string>(type: "TEXT", nullable: false),
                    version = table.Column<string>(type: "TEXT", nullable: false),
                    started_at = table.Column<string>(type: "TEXT", nullable: false),
                    finished = table.Column<bool>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_import_batch", x => x.number);
                }
            );

            migrationBuilder.CreateTable(
                name: "kit",
                columns: table => new
                {
                    id = table.Column<string>(type: "TEXT", nullable: false),
                    position = table.Column<int>(type: "INTEGER", nullable: false),
                    count = table.Column<int>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_kit", x => x.id);
                }
            );

            migrationBuilder.CreateTable(
                name: "plan",
                columns: table => new
                {
                    number = table.Column<int>(type: "INTEGER", nullable: false),
                    from = table.Column<string>(type: "TEXT", nullable: false),
                    weeks = table.Column<int>(type: "INTEGER", nullable: false),
                    saved_at = table.Column<string>(type: "TEXT", nullable: false),
                    json = table.Column<string>(type: "TEXT", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_plan", x => x.number);
                }
            );

            migrationBuilder.CreateTable(
                name: "policy",
                columns: table => new
                {
                    key = table.Column<string>(type: "TEXT", nullable: false),
                    value = table.Column<string>(type: "TEXT", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_policy", x => x.key);
                }
            );

            migrationBuilder.CreateTable(
                name: "practice",
                columns: table => new
                {
                    position = table.Column<int>(type: "INTEGER", nullable: false),
                    day = table.Column<string>(type: "TEXT", nullable: false),
                    start = table.Column<string>(type: "TEXT", nullable: true),
                    minutes = table.Column<int>(type: "INTEGER", nullable: true),
                    sport = table.Column<string>(type: "TEXT", nullable: true),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_practice", x => x.position);
                }
            );

            migrationBuilder.CreateTable(
                name: "problem",
                columns: table => new
                {
                    position = table.Column<int>(type: "INTEGER", nullable: false),
                    file = table.Column<string>(type: "TEXT", nullable: false),
                    line = table.Column<int>(type: "INTEGER", nullable: true),
                    weight = table.Column<string>(type: "TEXT", nullable: false),
                    sentence = table.Column<string>(type: "TEXT", nullable: false),
                    athlete_id = table.Column<string>(type: "TEXT", nullable: true),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_problem", x => x.position);
                }
            );

            migrationBuilder.CreateTable(
                name: "raw",
                columns: table => new
                {
                    sha256 = table.Column<string>(type: "TEXT", nullable: false),
                    length = table.Column<long>(type: "INTEGER", nullable: false),
                    packed = table.Column<byte[]>(type: "BLOB", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_raw", x => x.sha256);
                }
            );

            migrationBuilder.CreateTable(
                name: "restriction",
                columns: table => new
                {
                    position = table.Column<int>(type: "INTEGER", nullable: false),
                    athlete_id = table.Column<string>(type: "TEXT", nullable: false),
                    from = table.Column<string>(type: "TEXT", nullable: false),
                    until = table.Column<string>(type: "TEXT", nullable: true),
                    site = table.Column<string>(type: "TEXT", nullable: true),
                    side = table.Column<string>(type: "TEXT", nullable: false),
                    allowed = table.Column<string>(type: "TEXT", nullable: false),
                    forbidden = table.Column<string>(type: "TEXT", nullable: false),
                    limit = table.Column<string>(type: "TEXT", nullable: true),
                    set_by = table.Column<string>(type: "TEXT", nullable: true),
                    role = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_restriction", x => x.position);
                }
            );

            migrationBuilder.CreateTable(
                name: "screen",
                columns: table => new
                {
                    position = table.Column<int>(type: "INTEGER", nullable: false),
                    athlete_id = table.Column<string>(type: "TEXT", nullable: false),
                    date = table.Column<string>(type: "TEXT", nullable: false),
                    test = table.Column<string>(type: "TEXT", nullable: false),
                    side = table.Column<string>(type: "TEXT", nullable: false),
                    value = table.Column<double>(type: "REAL", nullable: false),
                    unit = table.Column<string>(type: "TEXT", nullable: false),
                    trial_number = table.Column<int>(type: "INTEGER", nullable: true),
                    assessor = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_screen", x => x.position);
                }
            );

            migrationBuilder.CreateTable(
                name: "squad",
                columns: table => new
                {
                    id = table.Column<int>(type: "INTEGER", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    time_zone = table.Column<string>(type: "TEXT", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_squad", x => x.id);
                }
            );

            migrationBuilder.CreateTable(
                name: "symptom",
                columns: table => new
                {
                    position = table.Column<int>(type: "INTEGER", nullable: false),
                    athlete_id = table.Column<string>(type: "TEXT", nullable: false),
                    date = table.Column<string>(type: "TEXT", nullable: false),
                    site = table.Column<string>(type: "TEXT", nullable: false),
                    side = table.Column<string>(type: "TEXT", nullable: false),
                    tissue = table.Column<string>(type: "TEXT", nullable: true),
                    named_by = table.Column<string>(type: "TEXT", nullable: true),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    when = table.Column<string>(type: "TEXT", nullable: true),
                    score = table.Column<double>(type: "REAL", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_symptom", x => x.position);
                }
            );

            migrationBuilder.CreateTable(
                name: "training_window",
                columns: table => new
                {
                    position = table.Column<int>(type: "INTEGER", nullable: false),
                    day = table.Column<string>(type: "TEXT", nullable: false),
                    start = table.Column<string>(type: "TEXT", nullable: false),
                    minutes = table.Column<int>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_training_window", x => x.position);
                }
            );

            migrationBuilder.CreateTable(
                name: "measurement",
                columns: table => new
                {
                    id = table.Column<string>(type: "TEXT", nullable: false),
                    sha256 = table.Column<string>(type: "TEXT", nullable: false),
                    version = table.Column<string>(type: "TEXT", nullable: false),
                    manifest = table.Column<string>(type: "TEXT", nullable: false),
                    athlete_id = table.Column<string>(type: "TEXT", nullable: true),
                    date = table.Column<string>(type: "TEXT", nullable: true),
                    task = table.Column<string>(type: "TEXT", nullable: true),
                    body_mass_kg = table.Column<double>(type: "REAL", nullable: true),
                    external_load_kg = table.Column<double>(type: "REAL", nullable: true),
                    drop_height_m = table.Column<double>(type: "REAL", nullable: true),
                    limb = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true),
                    device = table.Column<string>(type: "TEXT", nullable: true),
                    refusal = table.Column<string>(type: "TEXT", nullable: true),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_measurement", x => x.id);
                    table.ForeignKey(
                        name: "FK_measurement_raw_sha256",
                        column: x => x.sha256,
                        principalTable: "raw",
                        principalColumn: "sha256",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "squad_file",
                columns: table => new
                {
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    sha256 = table.Column<string>(type: "TEXT", nullable: false),
                    missing = table.Column<bool>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_squad_file", x => x.name);
                    table.ForeignKey(
                        name: "FK_squad_file_raw_sha256",
                        column: x => x.sha256,
                        principalTable: "raw",
                        principalColumn: "sha256",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "recording",
                columns: table => new
                {
                    file = table.Column<string>(type: "TEXT", nullable: false),
                    position = table.Column<int>(type: "INTEGER", nullable: false),
                    sha256 = table.Column<string>(type: "TEXT", nullable: true),
                    measurement_id = table.Column<string>(type: "TEXT", nullable: true),
                    refusal = table.Column<string>(type: "TEXT", nullable: true),
                    athlete_id = table.Column<string>(type: "TEXT", nullable: true),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_recording", x => x.file);
                    table.ForeignKey(
                        name: "FK_recording_measurement_measurement_id",
                        column: x => x.measurement_id,
                        principalTable: "measurement",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict
                    );
                    table.ForeignKey(
                        name: "FK_recording_raw_sha256",
                        column: x => x.sha256,
                        principalTable: "raw",
                        principalColumn: "sha256",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "trial",
                columns: table => new
                {
                    measurement_id = table.Column<string>(type: "TEXT", nullable: false),
                    number = table.Column<int>(type: "INTEGER", nullable: false),
                    task = table.Column<string>(type: "TEXT", nullable: false),
                    onset_s = table.Column<double>(type: "REAL", nullable: true),
                    peak_downward_velocity_s = table.Column<double>(type: "REAL", nullable: true),
                    bottom_s = table.Column<double>(type: "REAL", nullable: true),
                    take_off_s = table.Column<double>(type: "REAL", nullable: true),
                    touch_down_s = table.Column<double>(type: "REAL", nullable: true),
                    first_touch_down_s = table.Column<double>(type: "REAL", nullable: true),
                    stable_s = table.Column<double>(type: "REAL", nullable: true),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_trial", x => new { x.measurement_id, x.number });
                    table.ForeignKey(
                        name: "FK_trial_measurement_measurement_id",
                        column: x => x.measurement_id,
                        principalTable: "measurement",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Cascade
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "contact",
                columns: table => new
                {
                    measurement_id = table.Column<string>(type: "TEXT", nullable: false),
                    trial_number = table.Column<int>(type: "INTEGER", nullable: false),
                    position = table.Column<int>(type: "INTEGER", nullable: false),
                    contact_s = table.Column<double>(type: "REAL", nullable: false),
                    flight_s = table.Column<double>(type: "REAL", nullable: false),
                    reactive_strength_index = table.Column<double>(type: "REAL", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey(
                        "PK_contact",
                        x => new
                        {
                            x.measurement_id,
                            x.trial_number,
                            x.position,
                        }
                    );
                    table.ForeignKey(
                        name: "FK_contact_trial_measurement_id_trial_number",
                        columns: x => new { x.measurement_id, x.trial_number },
                        principalTable: "trial",
                        principalColumns: new[] { "measurement_id", "number" },
                        onDelete: ReferentialAction.Cascade
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "measure",
                columns: table => new
                {
                    measurement_id = table.Column<string>(type: "TEXT", nullable: false),
                    trial_number = table.Column<int>(type: "INTEGER", nullable: false),
                    position = table.Column<int>(type: "INTEGER", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    value = table.Column<double>(type: "REAL", nullable: false),
                    unit = table.Column<string>(type: "TEXT", nullable: false),
                    standard_uncertainty = table.Column<double>(type: "REAL", nullable: false),
                    method = table.Column<string>(type: "TEXT", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey(
                        "PK_measure",
                        x => new
                        {
                            x.measurement_id,
                            x.trial_number,
                            x.position,
                        }
                    );
                    table.ForeignKey(
                        name: "FK_measure_trial_measurement_id_trial_number",
                        columns: x => new { x.measurement_id, x.trial_number },
                        principalTable: "trial",
                        principalColumns: new[] { "measurement_id", "number" },
                        onDelete: ReferentialAction.Cascade
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "remark",
                columns: table => new
                {
                    measurement_id = table.Column<string>(type: "TEXT", nullable: false),
                    trial_number = table.Column<int>(type: "INTEGER", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    position = table.Column<int>(type: "INTEGER", nullable: false),
                    text = table.Column<string>(type: "TEXT", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey(
                        "PK_remark",
                        x => new
                        {
                            x.measurement_id,
                            x.trial_number,
                            x.kind,
                            x.position,
                        }
                    );
                    table.ForeignKey(
                        name: "FK_remark_trial_measurement_id_trial_number",
                        columns: x => new { x.measurement_id, x.trial_number },
                        principalTable: "trial",
                        principalColumns: new[] { "measurement_id", "number" },
                        onDelete: ReferentialAction.Cascade
                    );
                }
            );

            migrationBuilder.CreateIndex(name: "IX_measure_name", table: "measure", column: "name");

            migrationBuilder.CreateIndex(name: "IX_measurement_athlete_id", table: "measurement", column: "athlete_id");

            migrationBuilder.CreateIndex(name: "IX_measurement_sha256", table: "measurement", column: "sha256");

            migrationBuilder.CreateIndex(
                name: "IX_recording_measurement_id",
                table: "recording",
                column: "measurement_id"
            );

            migrationBuilder.CreateIndex(name: "IX_recording_position", table: "recording", column: "position");

            migrationBuilder.CreateIndex(name: "IX_recording_sha256", table: "recording", column: "sha256");

            migrationBuilder.CreateIndex(name: "IX_squad_file_sha256", table: "squad_file", column: "sha256");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(name: "athlete");

            migrationBuilder.DropTable(name: "completed");

            migrationBuilder.DropTable(name: "contact");

            migrationBuilder.DropTable(name: "fixture");

            migrationBuilder.DropTable(name: "import_batch");

            migrationBuilder.DropTable(name: "kit");

            migrationBuilder.DropTable(name: "measure");

            migrationBuilder.DropTable(name: "plan");

            migrationBuilder.DropTable(name: "policy");

            migrationBuilder.DropTable(name: "practice");

            migrationBuilder.DropTable(name: "problem");

            migrationBuilder.DropTable(name: "recording");

            migrationBuilder.DropTable(name: "remark");

            migrationBuilder.DropTable(name: "restriction");

            migrationBuilder.DropTable(name: "screen");

            migrationBuilder.DropTable(name: "squad");

            migrationBuilder.DropTable(name: "squad_file");

            migrationBuilder.DropTable(name: "symptom");

            migrationBuilder.DropTable(name: "training_window");

            migrationBuilder.DropTable(name: "trial");

            migrationBuilder.DropTable(name: "measurement");

            migrationBuilder.DropTable(name: "raw");
        }
    }
}
