package org.shopclime.form;

import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopFile;
import org.shopclime.shop.ShopReading;
import org.shopclime.shop.Stations;

/** A shop with something of every kind and little to reckon. */
final class SmallShop {

  static final String TEXT =
      """
      {
        "shopclime": 1,
        "name": "Small shop",
        "place": {"station": "722230"},
        "work": {"hours": "Mon-Fri 8:00-17:00"},
        "rooms": [
          {
            "name": "Shop",
            "use": "cooled",
            "floorArea": "200 ft2",
            "height": "8 ft",
            "faces": [
              {
                "name": "West wall", "part": "wall", "azimuth": "W",
                "width": "20 ft", "height": "8 ft",
                "build": {
                  "kind": "framed", "member": "2x4",
                  "cladding": ["plywood 1/2 in"], "cavity": "R-13", "gaps": "3 %",
                  "lining": ["gypsum board 1/2 in"]
                },
                "windows": [
                  {"name": "Window", "width": "3 ft", "height": "3 ft", "offset": "1 ft",
                   "glass": "double clear, aluminium"}
                ],
                "doors": [
                  {"name": "Entry door", "type": "entry", "width": "3 ft", "height": "6.75 ft",
                   "leaf": "insulated steel entry", "boards": ["XPS foam 1 in"]}
                ]
              },
              {
                "name": "Roof", "part": "roof", "tilt": "0 deg", "width": "20 ft", "height": "10 ft",
                "build": {"kind": "layers", "layers": ["sheet steel", "XPS foam 2 in"]}
              },
              {
                "name": "Floor", "part": "floor", "behind": "ground", "tilt": "180 deg",
                "width": "20 ft", "height": "10 ft",
                "build": {"kind": "slab", "layers": ["concrete 4 in"], "exposedPerimeter": "60 ft"}
              }
            ],
            "leakage": "average",
            "fans": [{"name": "Fan", "way": "out", "flow": "50 cfm"}],
            "gains": [
              {"kind": "people"},
              {"kind": "motor", "name": "Grinder", "power": "1 hp"}
            ]
          }
        ],
        "unit": {"capacity": "12000 BTU/h"}
      }
      """;

  private SmallShop() {}

  static Shop shop() {
    ShopReading reading = ShopFile.read(TEXT, Stations.any());
    if (reading instanceof ShopReading.Good good) {
      return good.shop();
    }
    throw new IllegalStateException(reading.toString());
  }
}
