using System.Runtime.CompilerServices;

namespace Nookwright.Tests.House;

/// <summary>Where the checkout stands, for tests that read its files.</summary>
public static class Checkout
{
    /// <summary>The checkout's top folder.</summary>
    public static string Folder { get; } = Find();

    /// <summary>A file of the checkout.</summary>
    public static string File(params string[] parts) => Path.Combine([Folder, .. parts]);

    private static string Find([CallerFilePath] string here = "")
    {
        for (var folder = Path.GetDirectoryName(here); folder is not null; folder = Path.GetDirectoryName(folder))
        {
            if (System.IO.File.Exists(Path.Combine(folder, "ROOMS.md")))
                return folder;
        }
        throw new DirectoryNotFoundException($"No ROOMS.md above {here}: run the tests from a checkout.");
    }
}
