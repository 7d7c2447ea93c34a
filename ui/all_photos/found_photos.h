#pragma once
// The photos that were found, put on shelves: those of a sitting together, those of no sitting by
// month. Only their numbers are held; records are read a page at a time when they are asked for.

#include <QAbstractListModel>
#include <QCache>
#include <map>
#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

class Session;

struct Shelf {
    std::optional<SittingId> sitting;
    std::optional<Date> month;  // its first day; nothing when the time is unknown too
    int first = 0;              // position
    int photos = 0;
};

class FoundPhotos : public QAbstractListModel {
    Q_OBJECT
  public:
    explicit FoundPhotos(Session& session, QObject* parent = nullptr);

    // Shelves come in the order of their newest photos. `words` are those that were looked for.
    void show(const std::vector<FoundPhoto>& found, const std::string& words);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;  // a photo in words

    const std::vector<Shelf>& shelves() const { return shelves_; }
    bool has_words() const { return !words_.empty(); }
    PhotoId id(int position) const { return ids_[static_cast<std::size_t>(position)]; }
    int position_of(PhotoId photo) const;  // -1: not among them

    // Nothing when it has gone since, or cannot be read.
    const Photo* photo(int position) const;
    // In the photo's own record, its look or its recipe; nothing when the words stand elsewhere.
    const FoundText* found_text(int position) const;
    // In the client's, the sitting's and the wedding's records.
    std::vector<FoundText> found_round(const Shelf& shelf) const;

    QString heading(const Shelf& shelf) const;  // "Ada Lindqvist, trial"
    QString day(const Shelf& shelf) const;      // "Saturday, 7 November 2026"
    QString in_words(const Photo& photo) const;

  private:
    struct Entry {
        std::optional<Photo> photo;
        std::vector<FoundText> texts;
    };
    using Page = std::vector<Entry>;

    const Entry* entry(int position) const;
    Page read_page(int first) const;
    const Sitting* sitting(SittingId id) const;
    QString client(ClientId id) const;
    QString client_of(const Photo& photo) const;

    Session& session_;
    std::vector<PhotoId> ids_;
    std::vector<Shelf> shelves_;
    std::string words_;
    mutable QCache<int, Page> pages_;
    mutable std::map<SittingId, Sitting> sittings_;
    mutable std::map<ClientId, QString> clients_;
};

}  // namespace quarterturn
