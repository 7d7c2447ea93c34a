#include "indexer/image/similarity.h"

#include <cmath>
#include <complex>
#include <stdexcept>

namespace quarterturn {
namespace {

// In the plane a turn with a scale is one complex factor, and Umeyama's solution a quotient.
using Complex = std::complex<double>;

Complex complex_of(const Spot& spot) {
    return {spot.x, spot.y};
}

Complex middle_of(std::span<const Spot> spots) {
    Complex sum = 0;
    for (const Spot& spot : spots) sum += complex_of(spot);
    return sum / static_cast<double>(spots.size());
}

double spread_of(std::span<const Spot> spots, Complex middle) {
    double spread = 0;
    for (const Spot& spot : spots) spread += std::norm(complex_of(spot) - middle);
    return spread;
}

}  // namespace

Spot spot_of(const PicturePoint& point, double aspect) {
    return {point.x * aspect, point.y};
}

PicturePoint point_of(const Spot& spot, double aspect) {
    return {spot.x / aspect, spot.y};
}

double distance(const Spot& one, const Spot& other) {
    return std::hypot(one.x - other.x, one.y - other.y);
}

Spot Similarity::operator()(const Spot& spot) const {
    return {along * spot.x - across * spot.y + x, across * spot.x + along * spot.y + y};
}

double Similarity::scale() const {
    return std::hypot(along, across);
}

double Similarity::turn() const {
    return std::atan2(across, along);
}

Similarity Similarity::inverse() const {
    const Complex factor = 1.0 / Complex(along, across);
    const Complex shift = -factor * Complex(x, y);
    return {factor.real(), factor.imag(), shift.real(), shift.imag()};
}

std::optional<Similarity> fit_similarity(std::span<const Spot> from, std::span<const Spot> onto) {
    if (from.size() != onto.size() || from.size() < 2) {
        throw std::invalid_argument("a similarity needs two spots or more, as many on each side");
    }
    constexpr double least_spread = 1e-8;  // spots a ten-thousandth of the picture apart
    const Complex from_middle = middle_of(from);
    const Complex onto_middle = middle_of(onto);
    const double spread = spread_of(from, from_middle);
    if (spread < least_spread || spread_of(onto, onto_middle) < least_spread) return std::nullopt;
    Complex factor = 0;
    for (std::size_t i = 0; i < from.size(); ++i) {
        factor +=
            (complex_of(onto[i]) - onto_middle) * std::conj(complex_of(from[i]) - from_middle);
    }
    factor /= spread;
    const Complex shift = onto_middle - factor * from_middle;
    return Similarity{factor.real(), factor.imag(), shift.real(), shift.imag()};
}

}  // namespace quarterturn
