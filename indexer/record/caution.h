#pragma once

namespace quarterturn {

inline constexpr const char* caution_before_passing_on =
    "It shows a person: keep or pass it on only as she has allowed and as your local law asks.";

inline constexpr const char* no_medical_advice =
    "This is no medical advice: follow the product's label, and send her to a doctor with what is "
    "not hair.";

inline constexpr const char* heat_caution =
    "Heat burns and dries hair: follow the labels of the tool and the product.";

inline constexpr const char* flammable_spray_caution =
    "Sprays catch fire: keep them from hot tools and flames, air the room, follow the label.";

}  // namespace quarterturn
