using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Jumpwright.Storage.Stores.Migrations
{
    /// <inheritdoc />
    public partial class RefusedFor : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(name: "refused_for", table: "recording", type: "TEXT", nullable: true);

            migrationBuilder.AddColumn<string>(name: "refused_for", table: "measurement", type: "TEXT", nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(name: "refused_for", table: "recording");

            migrationBuilder.DropColumn(name: "refused_for", table: "measurement");
        }
    }
}
