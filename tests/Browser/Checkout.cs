using System.Reflection;

namespace Nookwright.Browser;

/// <summary>Where the built program and the demos are.</summary>
internal static class Checkout
{
    public static string WebProgram => Path.GetFullPath(Metadata("WebProgram"));

    public static string Demos => Path.GetFullPath(Metadata("Demos"));

    private static string Metadata(string key) =>
        typeof(Checkout)
            .Assembly.GetCustomAttributes<AssemblyMetadataAttribute>()
            .First(attribute => attribute.Key == key)
            .Value!;
}
