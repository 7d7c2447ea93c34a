#pragma once
// Only commands that draw need Qt; it is started for them, without a screen.

#include <memory>

class QGuiApplication;

namespace quarterturn {

class Drawing {
  public:
    Drawing();
    ~Drawing();
    Drawing(const Drawing&) = delete;
    Drawing& operator=(const Drawing&) = delete;

  private:
    std::unique_ptr<QGuiApplication> application_;
};

}  // namespace quarterturn
