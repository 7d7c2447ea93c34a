#pragma once
// Row numbers in the library file, one type for each kind of row so that they cannot be mixed up.

#include <compare>
#include <cstdint>
#include <functional>

namespace quarterturn {

template <class Row>
struct Id {
    std::int64_t value = 0;

    auto operator<=>(const Id&) const = default;
    explicit operator bool() const { return value != 0; }
};

using ClientId = Id<struct ClientRow>;
using WeddingId = Id<struct WeddingRow>;
using SittingId = Id<struct SittingRow>;
using LookId = Id<struct LookRow>;
using PhotoId = Id<struct PhotoRow>;
using DeviceId = Id<struct DeviceRow>;
using RevisionId = Id<struct RevisionRow>;
using SignOffId = Id<struct SignOffRow>;

}  // namespace quarterturn

template <class Row>
struct std::hash<quarterturn::Id<Row>> {
    std::size_t operator()(quarterturn::Id<Row> id) const noexcept {
        return std::hash<std::int64_t>{}(id.value);
    }
};
