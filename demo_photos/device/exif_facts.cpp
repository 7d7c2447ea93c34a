#include "demo_photos/device/exif_facts.h"

#include <cmath>

namespace quarterturn::demo {

namespace {

std::string rational(double value, int scale) {
    return std::to_string(std::lround(value * scale)) + "/" + std::to_string(scale);
}

std::string degrees_minutes_seconds(double value) {
    value = std::abs(value);
    const auto whole = static_cast<int>(value);
    const auto minutes = static_cast<int>((value - whole) * 60.0);
    const double seconds = (value - whole - minutes / 60.0) * 3600.0;
    return std::to_string(whole) + "/1 " + std::to_string(minutes) + "/1 " + rational(seconds, 100);
}

}  // namespace

Exiv2::ExifData exif_of(const PhotoFacts& facts, cv::Size stored) {
    Exiv2::ExifData exif;
    exif["Exif.Image.Make"] = facts.make;
    exif["Exif.Image.Model"] = facts.model;
    exif["Exif.Image.Orientation"] = static_cast<std::uint16_t>(facts.orientation);
    exif["Exif.Image.DateTime"] = facts.taken;
    exif["Exif.Photo.DateTimeOriginal"] = facts.taken;
    exif["Exif.Photo.DateTimeDigitized"] = facts.taken;
    exif["Exif.Photo.SubSecTimeOriginal"] = facts.subseconds;
    if (!facts.offset.empty()) {
        exif["Exif.Photo.OffsetTimeOriginal"] = facts.offset;
        exif["Exif.Photo.OffsetTime"] = facts.offset;
    }
    exif["Exif.Photo.BodySerialNumber"] = facts.serial;
    exif["Exif.Photo.LensModel"] = facts.lens;
    exif["Exif.Photo.FocalLength"] =
        Exiv2::Rational(static_cast<int>(std::lround(facts.focal_mm * 10.0)), 10);
    exif["Exif.Photo.FocalLengthIn35mmFilm"] = static_cast<std::uint16_t>(facts.focal_35mm);
    exif["Exif.Photo.FNumber"] =
        Exiv2::Rational(static_cast<int>(std::lround(facts.aperture * 10.0)), 10);
    exif["Exif.Photo.ExposureTime"] = Exiv2::Rational(1, facts.exposure_denominator);
    exif["Exif.Photo.ISOSpeedRatings"] = static_cast<std::uint16_t>(facts.iso);
    exif["Exif.Photo.ColorSpace"] = static_cast<std::uint16_t>(facts.display_p3 ? 0xFFFF : 1);
    exif["Exif.Photo.PixelXDimension"] = static_cast<std::uint32_t>(stored.width);
    exif["Exif.Photo.PixelYDimension"] = static_cast<std::uint32_t>(stored.height);
    if (facts.place) {
        exif["Exif.GPSInfo.GPSLatitudeRef"] = facts.place->latitude < 0.0 ? "S" : "N";
        exif["Exif.GPSInfo.GPSLatitude"] = degrees_minutes_seconds(facts.place->latitude);
        exif["Exif.GPSInfo.GPSLongitudeRef"] = facts.place->longitude < 0.0 ? "W" : "E";
        exif["Exif.GPSInfo.GPSLongitude"] = degrees_minutes_seconds(facts.place->longitude);
    }
    return exif;
}

}  // namespace quarterturn::demo
