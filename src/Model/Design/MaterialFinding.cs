using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>A piece or member without a sheet it could be made of.</summary>
internal static class MaterialFinding
{
    public static Refusal Missing(string piece, string? material, string field) =>
        new(
            material is null
                ? $"{piece} has no material; name one of the shop's sheets."
                : $"the shop has no sheet \"{material}\" for {piece}; name one it has, or add it to the shop.",
            field
        )
        {
            Rule = "material.missing",
        };
}
