using Nookwright.Bench;
using Nookwright.Cutting;
using Nookwright.Tests.House;

namespace Nookwright.Tests.Planning;

/// <summary>Published instances of guillotine cutting, from a folder <c>shared/data</c> beside the checkout or above it.</summary>
internal static class PublicInstances
{
    /// <summary>A file of the folder; a test that needs it is skipped where there is none.</summary>
    public static string File(string name)
    {
        for (
            var folder = Path.GetDirectoryName(Checkout.Folder);
            folder is not null;
            folder = Path.GetDirectoryName(folder)
        )
            if (Path.Combine(folder, "shared", "data", name) is var file && System.IO.File.Exists(file))
                return file;
        Assert.Skip($"There is no shared/data/{name} above the checkout.");
        return "";
    }

    /// <summary>Bin packing instances; parts are not turned.</summary>
    public static IEnumerable<(string Name, CutRequest Request)> Bins(string name) =>
        InstanceFile.Read(File(name), mayTurn: false);

    /// <summary>Sums of bins per class and size, by method; parts are not turned.</summary>
    public static Dictionary<string, Dictionary<string, int>> BestKnown() =>
        InstanceFile.Published(File("class500_best_known_guillotine.json"), mayTurn: false);
}
