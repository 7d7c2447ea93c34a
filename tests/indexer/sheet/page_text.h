#pragma once

#include "indexer/sheet/page.h"

namespace quarterturn {

inline std::string text_of(const Page& page) {
    std::string text;
    for (const PageItem& item : page.items) {
        if (const auto* words = std::get_if<TextItem>(&item)) text += words->text + '\n';
        if (const auto* frame = std::get_if<FrameItem>(&item)) text += frame->text + '\n';
    }
    return text;
}

inline std::string text_of(const Document& document) {
    std::string text;
    for (const Page& page : document.pages) text += text_of(page);
    return text;
}

template <class Item>
std::vector<Item> items_of(const Document& document) {
    std::vector<Item> items;
    for (const Page& page : document.pages) {
        for (const PageItem& item : page.items) {
            if (const auto* found = std::get_if<Item>(&item)) items.push_back(*found);
        }
    }
    return items;
}

inline std::string repeated(const std::string& words, int times) {
    std::string text;
    for (int i = 0; i < times; ++i) text += words;
    return text;
}

}  // namespace quarterturn
