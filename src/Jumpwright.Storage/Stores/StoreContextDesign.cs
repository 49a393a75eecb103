using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Jumpwright.Storage.Stores;

/// <summary>For <c>dotnet ef</c> only: it reads the model and opens no database.</summary>
internal sealed class StoreContextDesign : IDesignTimeDbContextFactory<StoreContext>
{
    public StoreContext CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<StoreContext>().UseSqlite("Data Source=:memory:").Options);
}
