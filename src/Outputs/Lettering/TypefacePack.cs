using System.Buffers.Binary;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Text;

namespace Nookwright.Lettering;

/// <summary>Takes font files out of the package they come in.</summary>
/// <remarks>
/// The package is a library whose one resource holds files one after the other. As its builder writes it: a length, the
/// length of an index, a version, a count; per file its path, offset and size; then the files. All numbers are 32 bits.
/// </remarks>
internal static class TypefacePack
{
    private const string PackName = "typeface.pack";
    private const string ResourceName = "!AvaloniaResources";

    /// <summary>The file with this name, whatever its folder.</summary>
    public static byte[] File(string name)
    {
        var pack = Resource();
        var index = new BinaryReader(new MemoryStream(pack), Encoding.UTF8);
        var filesAt = 4 + index.ReadInt32();
        index.ReadInt32();
        for (var left = index.ReadInt32(); left > 0; left--)
        {
            var (path, offset, size) = (index.ReadString(), index.ReadInt32(), index.ReadInt32());
            if (path.EndsWith("/" + name, StringComparison.Ordinal))
                return pack.AsSpan(filesAt + offset, size).ToArray();
        }
        throw new InvalidOperationException($"The typeface's package has no file {name}.");
    }

    private static byte[] Resource()
    {
        using var stream =
            typeof(TypefacePack).Assembly.GetManifestResourceStream(PackName)
            ?? throw new InvalidOperationException("This build lacks the typeface's package; restore and build again.");
        using var library = new PEReader(stream);
        var resources = library.PEHeaders.CorHeader!.ResourcesDirectory;
        var all = library.GetSectionData(resources.RelativeVirtualAddress).GetContent(0, resources.Size);
        var at = (int)Found(library.GetMetadataReader()).Offset;
        return [.. all.AsSpan(at + 4, BinaryPrimitives.ReadInt32LittleEndian(all.AsSpan(at, 4)))];
    }

    private static ManifestResource Found(MetadataReader names) =>
        names
            .ManifestResources.Select(names.GetManifestResource)
            .First(resource => names.GetString(resource.Name) == ResourceName);
}
