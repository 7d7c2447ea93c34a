#include "indexer/sheet/phone_page.h"

#include "indexer/sheet/heads.h"
#include "indexer/sheet/phone_writer.h"
#include "indexer/sheet/photo_cell.h"
#include "indexer/sheet/wording.h"

namespace quarterturn {
namespace {

std::vector<SheetPhoto> photos_on(const WeddingBoard& board, Library& library, Decoder& decoder) {
    std::vector<SheetPhoto> photos;
    for (const BoardClient& client : board.clients) {
        for (const BoardLook& look : client.looks) {
            for (const BoardShot& shot : look.shots) {
                if (!shot.photo) continue;
                photos.push_back(*photo_cell(*shot.photo, library.folder()).photo);
            }
        }
    }
    find_heads(photos, library, decoder);
    return photos;
}

std::string too_large(std::size_t bytes, std::size_t most) {
    const auto megabytes = [](std::size_t size) {
        const std::size_t tenths = (size + 50'000) / 100'000;
        return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + " MB";
    };
    return "The page is " + megabytes(bytes) + ", more than " + megabytes(most) +
           ", though its pictures are as small as can still be read: write one client at a time.";
}

}  // namespace

PhonePage phone_page(const WeddingBoard& board, Library& library, Decoder& decoder, LocalTime now,
                     std::size_t most_bytes) {
    const auto name = library.settings().get(business_name_setting);
    const Printed printed{name.value_or(""), now};
    const std::size_t words = phone_html(board, printed, {}).size();
    const std::vector<SheetPhoto> photos = photos_on(board, library, decoder);
    const std::size_t around = photos.size() * 256;  // the tags of the pictures
    const std::size_t left = most_bytes > words + around ? most_bytes - words - around : 0;
    const PhonePictures pictures = phone_pictures(photos, left / 4 * 3, decoder, library.disk());
    PhonePage page{phone_html(board, printed, pictures.pictures), {}};
    for (std::size_t i = 0; i < photos.size(); ++i) {
        const std::string& problem = pictures.pictures[i].problem;
        if (problem.empty()) continue;
        page.problems.push_back(photos[i].item.file.string() + " is not shown. " + problem);
    }
    if (page.html.size() > most_bytes) {
        page.problems.push_back(too_large(page.html.size(), most_bytes));
    }
    return page;
}

}  // namespace quarterturn
