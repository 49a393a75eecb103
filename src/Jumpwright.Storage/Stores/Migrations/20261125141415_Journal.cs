using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Jumpwright.Storage.Stores.Migrations
{
    /// <inheritdoc />
    public partial class Journal : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "journal",
                columns: table => new
                {
                    id = table.Column<string>(type: "TEXT", nullable: false),
                    number = table.Column<int>(type: "INTEGER", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    athlete_id = table.Column<string>(type: "TEXT", nullable: true),
                    session_id = table.Column<string>(type: "TEXT", nullable: true),
                    made_at = table.Column<string>(type: "TEXT", nullable: false),
                    received_at = table.Column<string>(type: "TEXT", nullable: false),
                    who = table.Column<string>(type: "TEXT", nullable: false),
                    json = table.Column<string>(type: "TEXT", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_journal", x => x.id);
                }
            );

            migrationBuilder.CreateIndex(name: "IX_journal_athlete_id", table: "journal", column: "athlete_id");

            migrationBuilder.CreateIndex(name: "IX_journal_number", table: "journal", column: "number");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(name: "journal");
        }
    }
}
