#include "demo_photos/device/exif_facts.h"

#include <fstream>
#include <stdexcept>

#include <opencv2/imgcodecs.hpp>

namespace quarterturn::demo {

cv::Mat stored_for(const cv::Mat& upright, int orientation) {
    cv::Mat out;
    switch (orientation) {
        case 2:
            cv::flip(upright, out, 1);
            return out;
        case 3:
            cv::rotate(upright, out, cv::ROTATE_180);
            return out;
        case 4:
            cv::flip(upright, out, 0);
            return out;
        case 5:
            cv::transpose(upright, out);
            return out;
        case 6:
            cv::rotate(upright, out, cv::ROTATE_90_COUNTERCLOCKWISE);
            return out;
        case 7:
            cv::transpose(upright, out);
            cv::rotate(out, out, cv::ROTATE_180);
            return out;
        case 8:
            cv::rotate(upright, out, cv::ROTATE_90_CLOCKWISE);
            return out;
        default:
            return upright;
    }
}

namespace {

std::vector<std::uint8_t> compress(const cv::Mat& stored, int most_bytes) {
    std::vector<std::uint8_t> bytes;
    for (int quality = 86; quality >= 50; quality -= 5) {
        cv::imencode(".jpg", stored, bytes,
                     {cv::IMWRITE_JPEG_QUALITY, quality, cv::IMWRITE_JPEG_PROGRESSIVE, 1,
                      cv::IMWRITE_JPEG_OPTIMIZE, 1});
        if (static_cast<int>(bytes.size()) <= most_bytes) {
            break;
        }
    }
    return bytes;
}

}  // namespace

void write_jpeg(const std::filesystem::path& file, const cv::Mat& upright, const PhotoFacts& facts,
                int most_bytes) {
    const cv::Mat stored = stored_for(upright, facts.orientation);
    const auto bytes = compress(stored, most_bytes);
    {
        std::ofstream out(file, std::ios::binary);
        out.write(reinterpret_cast<const char*>(bytes.data()),
                  static_cast<std::streamsize>(bytes.size()));
        if (!out) {
            throw std::runtime_error(
                file.string() + " cannot be written: is the folder there and is the disk full?");
        }
    }
    auto image = Exiv2::ImageFactory::open(file.string());
    image->readMetadata();
    image->setExifData(exif_of(facts, stored.size()));
    if (!facts.keyword.empty()) {
        Exiv2::XmpData xmp;
        auto subject = Exiv2::Value::create(Exiv2::xmpBag);
        subject->read(facts.keyword);
        xmp.add(Exiv2::XmpKey("Xmp.dc.subject"), subject.get());
        image->setXmpData(xmp);
        Exiv2::IptcData iptc;
        iptc["Iptc.Application2.Keywords"] = facts.keyword;
        image->setIptcData(iptc);
    }
    if (facts.display_p3) {
        const std::string profile = display_p3_profile();
        Exiv2::DataBuf buffer(reinterpret_cast<const Exiv2::byte*>(profile.data()),
                              static_cast<long>(profile.size()));
        image->setIccProfile(buffer);
    }
    image->writeMetadata();
}

}  // namespace quarterturn::demo
