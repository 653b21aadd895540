using Nookwright.Files;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Shop;

namespace Nookwright.Tests.Files;

public class JobTextTests
{
    private static Project SmallJob =>
        new()
        {
            Name = "Bay",
            Units = LengthUnit.Millimetres,
            Shop = new Workshop
            {
                Sheets =
                [
                    new SheetGood
                    {
                        Id = "ply",
                        Nominal = "18 mm",
                        HasFigure = false,
                    },
                ],
            },
            Pieces =
            [
                new Carcass
                {
                    Id = "box-1",
                    Width = "600 mm",
                    Height = "700",
                    Depth = "ply.thickness * 20",
                    Material = "ply",
                    At = new Place { X = "5 mm" },
                },
                new Trim
                {
                    Id = "cap",
                    Length = "1 m",
                    Width = "30 mm",
                    Lie = PanelLie.Flat,
                },
            ],
        };

    [Fact]
    public void A_job_is_written_in_order_with_short_things_on_one_line() =>
        Assert.Equal(
            """
            {
              "format": "nookwright-job",
              "version": 1,
              "name": "Bay",
              "units": "millimetres",
              "shop": {
                "sheets": [
                  { "id": "ply", "nominal": "18 mm", "hasFigure": false }
                ]
              },
              "pieces": [
                {
                  "kind": "carcass",
                  "id": "box-1",
                  "material": "ply",
                  "at": { "x": "5 mm" },
                  "width": "600 mm",
                  "height": "700",
                  "depth": "ply.thickness * 20"
                },
                { "kind": "trim", "id": "cap", "length": "1 m", "width": "30 mm", "lie": "flat" }
              ]
            }

            """,
            JobFile.Write(SmallJob)
        );
}
