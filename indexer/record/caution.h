#pragma once

namespace quarterturn {

inline constexpr const char* caution_before_passing_on =
    "It shows a person: keep or pass it on only as she has allowed and as your local law asks.";

}  // namespace quarterturn
